package spanledger.resistance.adm;

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

/**
 * Axial compression by the Aluminum Design Manual 2020, chapter E: buckling of the member, of its
 * elements, and of both together.
 *
 * <p>Inputs A, I_y, I_z, I_t, I_w, y_s, z_s, E, G, L_cr_y, L_cr_z, L_cr_T; F_cy, B_c, D_c, C_c; A_w
 * (area within 1 in. of welds that count) with F_cyw, B_cw, D_cw, C_cw; P_lb (sum of the elements'
 * strengths), F_e_lb (least elastic buckling stress of the elements); φ_c, Ω_c. The last step is
 * P_c.
 */
public final class CompressionStrength {

  private static final String WORK = "Aluminum Design Manual 2020";
  private static final Source MEMBER = Source.fromMemory(WORK, "E.3");
  private static final Source TORSION = Source.fromMemory(WORK, "E.3.2");
  private static final Source WELD = Source.fromMemory(WORK, "E.3, members with welds");
  private static final Source BOTH = Source.fromMemory(WORK, "E.5");

  /** What out-of-straightness leaves of the elastic buckling strength. */
  private static final double CROOKED = 0.85;

  private static final double STRAIGHTER = 0.15;

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private CompressionStrength() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("adm-compression", "Axial compression, Aluminum Design Manual");
    ElasticTorsionalBuckling elastic = ElasticTorsionalBuckling.write(p);
    Reference modulus = elastic.modulus();
    Reference area = elastic.area();
    Curve parent = Curve.inputs(p, "");
    Reference beside =
        p.input("A_w", "area within 1 in. of welds", Dimension.AREA, Domain.NOT_NEGATIVE);
    Curve weld = Curve.inputs(p, "w");
    Reference local =
        p.input("P_lb", "sum of the strengths of the elements", Dimension.FORCE, Domain.POSITIVE);
    Reference localElastic =
        Symbols.stress(p, "F_e_lb", "least elastic buckling stress of the elements");
    Factors factors = Factors.inputs(p, "c", "compression");

    Reference torsional =
        p.step(
            "λ_T",
            "slenderness for torsional and torsional-flexural buckling",
            Dimension.NONE,
            pi().times(sqrt(modulus.over(elastic.coupled()))),
            TORSION);
    Reference slenderness =
        p.step(
            "λ",
            "greatest slenderness",
            Dimension.NONE,
            max(elastic.slendernessY(), elastic.slendernessZ(), torsional),
            MEMBER);
    Reference stress = parent.write(p, "", "member", slenderness, modulus, MEMBER);
    Reference weldStress =
        weld.write(p, "w", "member as if all beside welds", slenderness, modulus, WELD);
    Reference member =
        p.step(
            "P_mb",
            "nominal strength, buckling of the member",
            Dimension.FORCE,
            stress.times(area.minus(beside)).plus(min(weldStress, stress).times(beside)),
            WELD);
    Reference both =
        p.step(
            "P_int",
            "nominal strength, buckling of member and elements together",
            Dimension.FORCE,
            choose(
                less(localElastic, member.over(area)),
                min(member, together(modulus, slenderness, localElastic).times(area)),
                member),
            BOTH);
    Reference nominal =
        p.step(
            "P_n",
            "nominal strength",
            Dimension.FORCE,
            min(member, local, both),
            Source.fromMemory(WORK, "E.1, E.3, E.4, E.5"));
    p.step(
        "P_c",
        "design strength in compression",
        Dimension.FORCE,
        factors.applied(nominal),
        Source.fromMemory(WORK, "E.1"));
    return p.build();
  }

  private static Expression together(Reference modulus, Reference slenderness, Reference local) {
    Expression member = pi().pow(2).times(modulus).times(CROOKED).over(slenderness.pow(2));
    return local.times(member.over(local).pow(0.333333333333333));
  }

  /** Strength over slenderness of one metal. */
  private record Curve(Reference yield, Reference intercept, Reference slope, Reference end) {

    static Curve inputs(Procedure.Builder p, String mark) {
      String where = mark.isEmpty() ? "" : ", beside welds";
      return new Curve(
          Symbols.stress(p, "F_cy" + mark, "compressive yield strength" + where),
          Symbols.stress(p, "B_c" + mark, "intercept, members" + where),
          Symbols.stress(p, "D_c" + mark, "slope, members" + where),
          Symbols.ratio(p, "C_c" + mark, "slenderness where the elastic range begins" + where));
    }

    Reference write(
        Procedure.Builder p,
        String mark,
        String of,
        Reference slenderness,
        Reference modulus,
        Source source) {
      Reference first =
          p.step(
              "λ_1" + mark,
              "slenderness up to which it yields, " + of,
              Dimension.NONE,
              intercept.minus(yield).over(slope),
              source);
      Expression crooked =
          number(CROOKED).plus(end.minus(slenderness).over(end.minus(first)).times(STRAIGHTER));
      return p.step(
          "F_c" + mark,
          "strength, " + of,
          Dimension.STRESS,
          choose(
              atMost(slenderness, first),
              yield,
              choose(
                  less(slenderness, end),
                  intercept.minus(slope.times(slenderness)).times(crooked),
                  pi().pow(2).times(modulus).times(CROOKED).over(slenderness.pow(2)))),
          source);
    }
  }
}
