package spanledger.resistance.asnzs1664;

import static spanledger.procedure.Formulas.atMost;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.less;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.pi;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.resistance.adm.ElasticTorsionalBuckling;
import spanledger.resistance.adm.Symbols;
import spanledger.resistance.adm.ThreeRanges;

/**
 * Axial compression by AS/NZS 1664.1: straight line, then Euler, with a capacity factor that falls
 * with slenderness. The Aluminum Design Manual 2020 keeps the factor and bends the line instead.
 *
 * <p>Inputs A .. L_cr_T of {@link ElasticTorsionalBuckling}; F_cy, B_c, D_c, C_c, k_c, F_cyw, A_w
 * (area within reach of welds), P_lb (design strength of the elements), F_e_lb, φ_cc_max; the last
 * step is P_c.
 */
public final class Column {

  private static final Source MEMBER = Given.clause("3.4.8");
  private static final Source TORSION = Given.clause("3.4.8.2");
  private static final Source LOCAL = Given.clause("4.7.1");
  private static final Source BOTH = Given.clause("4.7.4");
  private static final Source WELD = Given.clause("6.4");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private Column() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("as-nzs-1664-column", "Axial compression, AS/NZS 1664.1");
    ElasticTorsionalBuckling elastic = ElasticTorsionalBuckling.write(p);
    Reference yield = Symbols.compressionYield(p);
    Reference intercept = Symbols.stress(p, "B_c", "intercept, members");
    Reference slope = Symbols.stress(p, "D_c", "slope, members");
    Reference end = Symbols.ratio(p, "C_c", "slenderness where the elastic range begins");
    Reference knee = Given.knee(p);
    Reference weldYield = Symbols.stress(p, "F_cyw", "compressive yield strength beside welds");
    Reference beside =
        p.input("A_w", "area within reach of welds", Dimension.AREA, Domain.NOT_NEGATIVE);
    Reference local =
        p.input("P_lb", "design strength of the elements", Dimension.FORCE, Domain.POSITIVE);
    Reference localElastic =
        Symbols.stress(p, "F_e_lb", "least elastic buckling stress of the elements");
    Reference most = Given.factor(p, "cc_max", "columns, greatest");

    Reference modulus = elastic.modulus();
    Reference slenderness =
        p.step(
            "λ",
            "greatest slenderness",
            Dimension.NONE,
            max(
                elastic.slendernessY(),
                elastic.slendernessZ(),
                pi().times(sqrt(modulus.over(elastic.coupled())))),
            TORSION);
    Reference relative =
        p.step(
            "λ_rel",
            "slenderness per that of elastic buckling at yield",
            Dimension.NONE,
            slenderness.over(pi()).times(sqrt(yield.over(modulus))),
            MEMBER);
    Reference factor =
        p.step(
            "φ_cc",
            "capacity factor of columns",
            Dimension.NONE,
            min(
                most,
                choose(
                    atMost(relative, number(1.2)),
                    number(1).minus(relative.times(0.21)),
                    number(0.58).plus(relative.times(0.14)))),
            MEMBER);
    Reference stress =
        new ThreeRanges(
                slenderness,
                yield.over(knee),
                intercept,
                slope,
                end,
                pi().pow(2).times(modulus).over(slenderness.pow(2)))
            .write(p, new ThreeRanges.Names("λ_1", "λ_2", "F_n", "member, before φ"), MEMBER);
    Expression softened = min(stress, weldYield);
    Reference area = elastic.area();
    Reference member =
        p.step(
            "P_mb",
            "design strength, buckling of the member",
            Dimension.FORCE,
            factor.times(stress.times(area.minus(beside)).plus(softened.times(beside))),
            WELD);
    Expression euler = pi().pow(2).times(modulus).over(slenderness.pow(2));
    Reference both =
        p.step(
            "P_int",
            "design strength, buckling of member and elements together",
            Dimension.FORCE,
            choose(
                less(localElastic, stress),
                min(
                    member,
                    factor
                        .times(localElastic)
                        .times(euler.over(localElastic).pow(0.333333333333333))
                        .times(area)),
                member),
            BOTH);
    p.step(
        "P_c", "design strength in compression", Dimension.FORCE, min(member, local, both), LOCAL);
    return p.build();
  }
}
