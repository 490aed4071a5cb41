package spanledger.bench;

import static spanledger.procedure.Formulas.abs;
import static spanledger.procedure.Formulas.atMost;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.constant;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.pi;
import static spanledger.procedure.Formulas.sqrt;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * Steps of a procedure worked out per second on one thread, while inputs change as in a sweep. The
 * procedure is a made-up member check of forty steps with the mix of operations of a real one:
 * products and quotients, squares, roots, a power or two, choices. Run with {@code -prof gc} to see
 * that nothing is allocated.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
public class ProcedureBenchmark {

  private static final int STEPS = 40;
  private static final Source MADE_UP = Source.derived("made up for measuring");

  private final CompiledProcedure check = memberCheck().compile();
  private final double[] values = check.newSlots();
  private int round;

  /** Forty steps. */
  @Benchmark
  @OperationsPerInvocation(STEPS)
  public double steps() {
    round = (round + 1) & 1023;
    values[0] = 20_000 + 10 * round;
    values[1] = 1e6 + 500 * round;
    values[2] = 4e5 + 300 * round;
    values[3] = 1000 + 2 * round;
    values[4] = 1e6 - 100 * round;
    values[5] = 3e5 + 100 * round;
    values[6] = 900 + round;
    check.evaluate(values);
    return values[values.length - 1];
  }

  private static Procedure memberCheck() {
    Procedure.Builder p = Procedure.named("member-check", "Made-up member check");
    Reference force = p.input("N", "axial force", Dimension.FORCE);
    Reference major = p.input("M_y", "moment", Dimension.MOMENT);
    Reference minor = p.input("M_z", "moment", Dimension.MOMENT);
    Reference length = p.input("L", "length", Dimension.LENGTH);
    Reference iy = p.input("I_y", "second moment", Dimension.SECOND_MOMENT);
    Reference iz = p.input("I_z", "second moment", Dimension.SECOND_MOMENT);
    Reference area = p.input("A", "area", Dimension.AREA);
    Expression modulus = constant(70_000, Dimension.STRESS);
    Expression strength = constant(160, Dimension.STRESS);
    Expression sum = number(0);
    // Ten steps for each of four cases, as for two axes and two ends.
    for (int i = 1; i <= 4; i++) {
      Reference inertia = i % 2 == 0 ? iz : iy;
      Reference moment = i % 2 == 0 ? minor : major;
      Expression factor = number(0.5 + 0.25 * i);
      Reference buckling = step(p, "L_" + i, Dimension.LENGTH, length.times(factor));
      Reference critical =
          step(
              p,
              "N_cr" + i,
              Dimension.FORCE,
              pi().pow(2).times(modulus).times(inertia).over(buckling.pow(2)));
      Reference slenderness =
          step(p, "λ_" + i, Dimension.NONE, sqrt(area.times(strength).over(critical)));
      Reference auxiliary =
          step(
              p,
              "φ_" + i,
              Dimension.NONE,
              number(1)
                  .plus(slenderness.minus(number(0.1)).times(0.2))
                  .plus(slenderness.pow(2))
                  .times(0.5));
      Reference reduction =
          step(
              p,
              "χ_" + i,
              Dimension.NONE,
              choose(
                  atMost(slenderness, number(0.1)),
                  number(1),
                  min(
                      number(1),
                      number(1)
                          .over(
                              auxiliary.plus(
                                  sqrt(
                                      max(
                                          auxiliary.pow(2).minus(slenderness.pow(2)),
                                          number(0))))))));
      Reference resistance =
          step(p, "N_Rd" + i, Dimension.FORCE, reduction.times(area).times(strength).over(1.1));
      Reference axial = step(p, "n_" + i, Dimension.NONE, abs(force).over(resistance));
      Reference sectionModulus =
          step(
              p, "W_" + i, Dimension.SECTION_MODULUS, inertia.over(constant(30, Dimension.LENGTH)));
      Reference bending =
          step(
              p,
              "m_" + i,
              Dimension.NONE,
              abs(moment).times(1.1).over(sectionModulus.times(strength)));
      Reference interaction =
          step(p, "η_" + i, Dimension.NONE, axial.pow(i == 1 ? 0.8 : 2).plus(bending).plus(sum));
      sum = interaction;
    }
    Procedure procedure = p.build();
    if (procedure.steps().size() != STEPS) {
      throw new IllegalStateException("Expected " + STEPS + " steps: " + procedure.steps().size());
    }
    return procedure;
  }

  private static Reference step(
      Procedure.Builder p, String symbol, Dimension dimension, Expression formula) {
    return p.step(symbol, symbol, dimension, formula, MADE_UP);
  }
}
