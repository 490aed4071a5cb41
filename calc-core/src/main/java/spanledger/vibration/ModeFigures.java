package spanledger.vibration;

import static spanledger.procedure.Formulas.abs;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.constant;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.pi;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * What a mode of vibration says: its frequency, how well the shape and the frequency belong
 * together, and what moves.
 *
 * <p>Inputs: λ = ω² in N/(mm·kg), U = uᵀKu, W = λ uᵀMu (N·mm), I_X, I_Y, I_Z (forces that set the
 * whole in motion, N), M (the whole mass, kg), E_o and E of all segments ({@link
 * spanledger.analysis.SegmentInertia}). Steps: ω, f, λ_R (Rayleigh's quotient), Δ (by how much it
 * differs), m_X, m_Y, m_Z (effective modal masses per whole mass) and e_floor.
 */
public final class ModeFigures {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private static final CompiledProcedure COMPILED = PROCEDURE.compile();

  private ModeFigures() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("mode-figures", "Frequencies and what moves");
    Dimension square = Dimension.whole(-1, 1, -1, 0);
    Dimension swinging = Dimension.whole(2, 0, 1, 0);
    Source dynamics = Source.derived("Vibration without damping: K u = λ M u, λ = ω²");
    Source rayleigh =
        Source.fromMemory("Lord Rayleigh, The Theory of Sound, vol. 1 (1894)", "§ 88");
    Source effective =
        Source.fromMemory("R. W. Clough and J. Penzien, Dynamics of Structures (1975)", "26-2");
    Reference lambda = p.input("λ", "square of the angular frequency", square, Domain.POSITIVE);
    Reference strain =
        p.input("U", "work of the stiffness on the mode", Dimension.MOMENT, Domain.POSITIVE);
    Reference inertia =
        p.input("W", "work of the inertia on the mode", Dimension.MOMENT, Domain.POSITIVE);
    Reference[] force = new Reference[3];
    String[] axes = {"X", "Y", "Z"};
    for (int i = 0; i < 3; i++) {
      force[i] = p.input("I_" + axes[i], "inertia of all along " + axes[i], Dimension.FORCE);
    }
    Reference mass = p.input("M", "mass of all", Dimension.MASS, Domain.POSITIVE);
    Reference floors = p.input("E_o", "swing of floors up and down", swinging);
    Reference all = p.input("E", "swing of all segments", swinging, Domain.NOT_NEGATIVE);
    Reference omega =
        p.step(
            "ω",
            "angular frequency; 1 N = 1000 kg·mm/s²",
            Dimension.FREQUENCY,
            sqrt(lambda.times(constant(1000, Dimension.whole(1, -1, 1, -2)))),
            dynamics);
    p.step("f", "frequency", Dimension.FREQUENCY, omega.over(pi().times(number(2))), dynamics);
    Reference quotient =
        p.step(
            "λ_R",
            "Rayleigh's quotient of the mode",
            square,
            lambda.times(strain).over(inertia),
            rayleigh);
    p.step(
        "Δ",
        "by how much it differs from λ",
        Dimension.NONE,
        abs(quotient.over(lambda).minus(number(1))),
        rayleigh);
    for (int i = 0; i < 3; i++) {
      p.step(
          "m_" + axes[i],
          "share of the mass that moves along " + axes[i] + " together",
          Dimension.NONE,
          force[i].pow(2).over(lambda.times(inertia).times(mass)),
          effective);
    }
    p.step(
        "e_floor",
        "share of the energy that is in floors moving up and down",
        Dimension.NONE,
        choose(greater(all, constant(0, swinging)), floors.over(all), number(0)),
        dynamics);
    return p.build();
  }

  /**
   * Works them out.
   *
   * @param inputs in the procedure's order
   */
  static double[] of(double... inputs) {
    double[] values = COMPILED.newSlots();
    System.arraycopy(inputs, 0, values, 0, inputs.length);
    COMPILED.evaluate(values);
    return values;
  }

  /** The frequency of an eigenvalue, Hz. */
  static double frequency(double lambda) {
    return of(lambda)[slot("f")];
  }

  static int slot(String symbol) {
    return COMPILED.slot(symbol);
  }
}
