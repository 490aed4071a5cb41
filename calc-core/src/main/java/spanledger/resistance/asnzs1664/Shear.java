package spanledger.resistance.asnzs1664;

import static spanledger.procedure.Formulas.atMost;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.less;
import static spanledger.procedure.Formulas.pi;

import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.resistance.adm.Symbols;

/**
 * Shear and torsion by AS/NZS 1664.1. The capacity factors of line and elastic range differ, so the
 * design stress drops where they meet.
 *
 * <p>Inputs b, t or R_b, t, L_v; A_v, W_t, E, F_sy, B_s, D_s, C_s, φ_y, φ_vp, φ_v; steps end in
 * F_s, V_c, T_c.
 */
public final class Shear {

  private static final Source FLAT = Given.clause("3.4.20");
  private static final Source ROUND = Given.clause("3.4.20 and 4.2");

  /** Flat webs. */
  public static final Procedure FLAT_WEBS = flat();

  /** Round tubes. */
  public static final Procedure ROUND_TUBE = round();

  private Shear() {}

  private static Procedure flat() {
    Procedure.Builder p =
        Procedure.named("as-nzs-1664-shear", "Shear and torsion of flat walls, AS/NZS 1664.1");
    Reference width = Symbols.length(p, "b", "clear height of the web");
    Reference thickness = Symbols.length(p, "t", "thickness of the web");
    write(p, width.over(thickness), FLAT);
    return p.build();
  }

  private static Procedure round() {
    Procedure.Builder p =
        Procedure.named(
            "as-nzs-1664-shear-round", "Shear and torsion of round tubes, AS/NZS 1664.1");
    Reference radius = Symbols.length(p, "R_b", "radius to the middle of the wall");
    Reference thickness = Symbols.length(p, "t", "thickness");
    Reference length =
        Symbols.length(p, "L_v", "length between places of full support of the wall");
    Expression along = length.over(radius).pow(0.25);
    write(p, radius.over(thickness).pow(0.625).times(along).times(2.9), ROUND);
    return p.build();
  }

  private static void write(Procedure.Builder p, Expression ratio, Source clause) {
    Reference area = Symbols.area(p, "A_v", "area of the webs, or half the area of a round tube");
    Reference twist = Symbols.modulusOfSection(p, "W_t", "torque over its greatest shear stress");
    Reference modulus = Symbols.modulus(p);
    Reference yield = Symbols.stress(p, "F_sy", "shear yield strength");
    Reference intercept = Symbols.stress(p, "B_s", "intercept, shear");
    Reference slope = Symbols.stress(p, "D_s", "slope, shear");
    Reference end = Symbols.ratio(p, "C_s", "slenderness where the elastic range begins, shear");
    Reference yielding = Given.factor(p, "y", "yielding");
    Reference line = Given.factor(p, "vp", "buckling in shear, line");
    Reference elastic = Given.factor(p, "v", "elastic buckling in shear");
    Reference slenderness = p.step("λ", "slenderness", Dimension.NONE, ratio, clause);
    Reference equivalent =
        p.step("λ_e", "equivalent slenderness", Dimension.NONE, slenderness.times(1.25), clause);
    Reference first =
        p.step(
            "λ_1",
            "equivalent slenderness up to which it yields",
            Dimension.NONE,
            intercept.minus(yielding.times(yield).over(line)).over(slope),
            clause);
    Reference stress =
        p.step(
            "F_s",
            "design stress in shear",
            Dimension.STRESS,
            choose(
                atMost(equivalent, first),
                yielding.times(yield),
                choose(
                    less(equivalent, end),
                    line.times(intercept.minus(slope.times(equivalent))),
                    elastic.times(pi().pow(2).times(modulus).over(equivalent.pow(2))))),
            clause);
    p.step("V_c", "design strength in shear", Dimension.FORCE, stress.times(area), clause);
    p.step(
        "T_c",
        "design strength in torsion, warping left out",
        Dimension.MOMENT,
        stress.times(twist),
        clause);
  }
}
