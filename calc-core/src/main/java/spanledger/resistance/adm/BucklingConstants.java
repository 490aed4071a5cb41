package spanledger.resistance.adm;

import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.constant;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.pi;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * The constants of the straight lines by which strengths fall with slenderness, from the yield
 * strengths of an alloy: B where the line meets the axis, D its slope, C where it meets the elastic
 * curve.
 *
 * <p>Inputs F_ty, F_cy, E, aged; steps F_sy, B_c, D_c, C_c (members), B_p, D_p, C_p (flat, uniform
 * compression), B_br, D_br, C_br (flat, bending in plane), B_t, D_t, C_t (round, compression),
 * B_tb, D_tb, C_tb (round, bending), B_s, D_s, C_s (shear).
 *
 * <p>A zone beside a weld has constants of its own: run with its yield strengths and aged = 0.
 */
public final class BucklingConstants {

  /** Below some 45 MPa the line of round elements does not meet the elastic curve. */
  private static final Domain WHERE_LINES_MEET = new Domain(50, true, 700);

  private static final double CUBE = 0.333333333333333;
  private static final int NEWTON_STEPS = 6;
  private static final double ONE_KSI = 6.89475729316836;
  private static final Source UNIT =
      Source.derived("Definitions of pound, inch and standard acceleration: 1000 lbf/in²");

  /** By the Aluminum Design Manual 2020. */
  public static final Procedure ADM = adm();

  /** By AS/NZS 1664.1:1997. */
  public static final Procedure AS_NZS = asNzs();

  private BucklingConstants() {}

  private static Procedure adm() {
    Source place = Source.fromMemory("Aluminum Design Manual 2020", "Tables B.4.1 and B.4.2");
    Source shear = Source.fromMemory("Aluminum Design Manual 2020", "Table A.4.1");
    Procedure.Builder p =
        Procedure.named("adm-buckling-constants", "Buckling constants, Aluminum Design Manual");
    Yield yield = yieldInputs(p);
    Reference ksi =
        p.step(
            "κ",
            "1 ksi, the unit that the constants are published for",
            Dimension.STRESS,
            constant(ONE_KSI, Dimension.STRESS),
            UNIT);
    Reference shearYield =
        p.step("F_sy", "shear yield strength", Dimension.STRESS, yield.tension().times(0.6), shear);
    return write(
        p,
        yield,
        shearYield,
        place,
        new Divisors(ksi.times(2250), ksi.times(1000)),
        new Divisors(ksi.times(1500), ksi.times(440)),
        new Divisors(ksi.times(340), ksi.times(340)),
        new Divisors(ksi.times(50000), ksi.times(6500)),
        new Divisors(ksi.times(800), ksi.times(240)));
  }

  private static Procedure asNzs() {
    Source place = Source.fromMemory("AS/NZS 1664.1:1997", "Tables 3.3(C) and 3.3(D)");
    Procedure.Builder p =
        Procedure.named("as-nzs-1664-buckling-constants", "Buckling constants, AS/NZS 1664.1");
    Yield yield = yieldInputs(p);
    Reference shearYield =
        p.step(
            "F_sy",
            "shear yield strength",
            Dimension.STRESS,
            yield.tension().over(sqrt(number(3))),
            place);
    return write(
        p,
        yield,
        shearYield,
        place,
        new Divisors(megapascal(15510), megapascal(6900)),
        new Divisors(megapascal(10340), megapascal(3030)),
        new Divisors(megapascal(2340), megapascal(2340)),
        new Divisors(megapascal(345000), megapascal(44800)),
        new Divisors(megapascal(5520), megapascal(1655)));
  }

  private static Expression megapascal(double value) {
    return constant(value, Dimension.STRESS);
  }

  private record Yield(
      Reference tension, Reference compression, Reference modulus, Reference aged) {}

  /** What the yield strength is divided by: tempers T5 to T9, and all others. */
  private record Divisors(Expression aged, Expression other) {}

  private static Yield yieldInputs(Procedure.Builder p) {
    return new Yield(
        Symbols.tensionYield(p),
        p.input("F_cy", "compressive yield strength", Dimension.STRESS, WHERE_LINES_MEET),
        Symbols.modulus(p),
        Symbols.aged(p));
  }

  private static Procedure write(
      Procedure.Builder p,
      Yield yield,
      Reference shearYield,
      Source place,
      Divisors member,
      Divisors flat,
      Divisors inPlane,
      Divisors round,
      Divisors shear) {
    Steps steps = new Steps(p, yield, place);
    Reference fcy = yield.compression();
    Reference bc = steps.intercept("B_c", "members", fcy, 1, member, 0.5);
    steps.slopeAndEnd("c", "members", bc);
    Reference bp = steps.intercept("B_p", "flat elements, uniform compression", fcy, 1, flat, CUBE);
    steps.slopeAndEnd("p", "flat elements, uniform compression", bp);
    Reference bbr =
        steps.intercept("B_br", "flat elements, bending in plane", fcy, 1.3, inPlane, CUBE);
    steps.bendingInPlane(bbr);
    Reference bt = steps.intercept("B_t", "round elements, compression", fcy, 1, round, 0.2);
    Reference dt = steps.roundSlope(bt);
    steps.roundEnd(bt, dt);
    steps.roundBending(round, fcy, bt, dt);
    Reference bs = steps.intercept("B_s", "shear", shearYield, 1, shear, CUBE);
    steps.slopeAndEnd("s", "shear", bs);
    return p.build();
  }

  /** Writes the steps of one publication. */
  private record Steps(Procedure.Builder p, Yield yield, Source place) {

    private Expression byTemper(Expression aged, Expression other) {
      return choose(Symbols.isAged(yield.aged()), aged, other);
    }

    Reference intercept(
        String symbol,
        String of,
        Reference strength,
        double times,
        Divisors divisors,
        double exponent) {
      Expression leading = times == 1 ? strength : strength.times(times);
      return p.step(
          symbol,
          "intercept, " + of,
          Dimension.STRESS,
          byTemper(
              grown(leading, strength.over(divisors.aged()), exponent),
              grown(leading, strength.over(divisors.other()), exponent)),
          place);
    }

    private static Expression grown(Expression leading, Expression ratio, double exponent) {
      Expression power = exponent == 0.5 ? sqrt(ratio) : ratio.pow(exponent);
      return leading.times(number(1).plus(power));
    }

    void slopeAndEnd(String mark, String of, Reference b) {
      Reference d =
          p.step(
              "D_" + mark,
              "slope, " + of,
              Dimension.STRESS,
              byTemper(b.over(10).times(sqrt(b.over(yield.modulus()))), steep(b)),
              place);
      p.step(
          "C_" + mark,
          "slenderness where the elastic range begins, " + of,
          Dimension.NONE,
          byTemper(b.times(0.41).over(d), b.times(2).over(d.times(3))),
          place);
    }

    private Expression steep(Reference b) {
      return b.over(20).times(sqrt(b.times(6).over(yield.modulus())));
    }

    void bendingInPlane(Reference b) {
      Reference d =
          p.step(
              "D_br", "slope, flat elements, bending in plane", Dimension.STRESS, steep(b), place);
      p.step(
          "C_br",
          "slenderness where the elastic range begins, flat elements, bending in plane",
          Dimension.NONE,
          b.times(2).over(d.times(3)),
          place);
    }

    Reference roundSlope(Reference b) {
      Expression root = b.over(yield.modulus()).pow(CUBE);
      return p.step(
          "D_t",
          "slope, round elements, compression",
          Dimension.STRESS,
          byTemper(b.over(4.5).times(root), b.over(3.7).times(root)),
          place);
    }

    /**
     * The line and the elastic curve of a tube meet at no simple expression. With s = √C_t, line
     * less curve is concave and rising left of the meeting, so Newton's steps from the left come
     * near it from one side.
     */
    void roundEnd(Reference b, Reference d) {
      Source newton = Source.derived("Newton's method");
      Expression elastic = pi().pow(2).times(yield.modulus()).over(16);
      Reference s =
          p.step(
              "s_0",
              "first guess of √C_t, below it",
              Dimension.NONE,
              sqrt(elastic.over(b)),
              newton);
      for (int i = 1; i <= NEWTON_STEPS; i++) {
        Expression wide = number(1).plus(s.over(35));
        Expression curve = elastic.over(s.times(wide).pow(2));
        Expression difference = b.minus(d.times(s)).minus(curve);
        Expression rise =
            curve
                .times(2)
                .times(number(1).over(s).plus(number(1).over(s.plus(number(35)))))
                .minus(d);
        s =
            p.step(
                "s_" + i,
                "√C_t, nearer, step " + i,
                Dimension.NONE,
                s.minus(difference.over(rise)),
                newton);
      }
      p.step(
          "C_t",
          "slenderness where line and elastic curve meet, round elements, compression",
          Dimension.NONE,
          s.pow(2),
          place);
    }

    void roundBending(Divisors divisors, Reference fcy, Reference bt, Reference dt) {
      Reference b = intercept("B_tb", "round elements, bending", fcy, 1.5, divisors, 0.2);
      Reference d =
          p.step(
              "D_tb",
              "slope, round elements, bending",
              Dimension.STRESS,
              b.over(2.7).times(b.over(yield.modulus()).pow(CUBE)),
              place);
      p.step(
          "C_tb",
          "slenderness where the lines of bending and compression meet, round elements",
          Dimension.NONE,
          b.minus(bt).over(d.minus(dt)).pow(2),
          place);
    }
  }
}
