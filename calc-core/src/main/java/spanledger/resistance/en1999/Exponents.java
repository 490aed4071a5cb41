package spanledger.resistance.en1999;

import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.number;

import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * Exponents of the interaction formulas. Open sections that are not doubly symmetric take the
 * linear ones.
 */
final class Exponents {

  static final Procedure PROCEDURE = define();

  private Exponents() {}

  private static Procedure define() {
    Steps p = new Steps("exponents", "Exponents of interaction, EN 1999-1-1");
    Reference symmetric = p.yes("s", "doubly symmetric");
    Reference solid = p.yes("m", "solid");
    Reference shapeY = p.factor("α_y", "shape factor about y");
    Reference shapeZ = p.factor("α_z", "shape factor about z");
    Reference area = p.positive("A_eff", "area that local buckling leaves", Dimension.AREA);
    Reference strength = p.proofStrength();
    Reference partial = p.yieldFactor();
    Reference ny = p.positive("N_b_y", "buckling resistance about y", Dimension.FORCE);
    Reference nz = p.positive("N_b_z", "buckling resistance about z", Dimension.FORCE);
    Reference nt = p.positive("N_b_T", "torsional-flexural buckling resistance", Dimension.FORCE);
    Reference squash =
        p.step(
            "N_Rd",
            "resistance without buckling of the member",
            area.times(strength).over(partial),
            Clause.of("6.3.3.1"));
    Reference chiY =
        p.step("χ_y", "reduction about y", min(number(1), ny.over(squash)), Clause.of("6.3.3.1"));
    Reference chiZ =
        p.step(
            "χ_zT",
            "least reduction of the other modes",
            min(number(1), nz.over(squash), nt.over(squash)),
            Clause.of("6.3.3.1"));
    Expression linear = number(1);
    Reference eta =
        p.step(
            "η_0",
            "exponent of the axial force",
            choose(
                greater(symmetric, number(0.5)),
                min(max(shapeZ.pow(2).times(shapeY.pow(2)), linear), number(2)),
                linear),
            Clause.of("6.2.9.1, eq. 6.42a"));
    Reference gamma =
        p.step(
            "γ_0",
            "exponent of the moment about y",
            choose(
                greater(symmetric, number(0.5)),
                min(max(shapeZ.pow(2), linear), number(1.56)),
                linear),
            Clause.of("6.2.9.1, eq. 6.42b"));
    Reference xi =
        p.step(
            "ξ_0",
            "exponent of the moment about z",
            choose(
                greater(symmetric, number(0.5)),
                min(max(shapeY.pow(2), linear), number(1.56)),
                linear),
            Clause.of("6.2.9.1, eq. 6.42c"));
    Reference psi =
        p.step(
            "ψ_0",
            "exponent of the axial force, hollow and solid",
            choose(greater(solid, number(0.5)), number(2), number(1.3)),
            Clause.of("6.2.9.2, eq. 6.43"));
    Expression least = number(0.8);
    p.step(
        "ξ_yc",
        "exponent, buckling about y",
        max(least, xi.times(chiY)),
        Clause.of("6.3.3.1, eq. 6.59"));
    p.step(
        "η_c",
        "exponent, buckling about z",
        max(least, eta.times(chiZ)),
        Clause.of("6.3.3.1, eq. 6.60"));
    p.step(
        "ξ_zc",
        "exponent of the moment about z, buckling about z",
        max(least, xi.times(chiZ)),
        Clause.of("6.3.3.1, eq. 6.60"));
    p.step("γ_c", "exponent of the moment about y", gamma.times(1), Clause.of("6.3.3.2, eq. 6.63"));
    p.step(
        "ψ_c",
        "exponent, buckling of hollow and solid members",
        max(least, psi.times(min(chiY, chiZ))),
        Clause.of("6.3.3.1, eq. 6.62"));
    return p.build();
  }
}
