package spanledger.resistance.adm;

import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.less;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.pi;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** Shear and torsion by the Aluminum Design Manual 2020, chapters G and H. */
public final class ShearStrength {

  private static final String WORK = "Aluminum Design Manual 2020";
  private static final Source FLAT = Source.fromMemory(WORK, "G.2 and G.3");
  private static final Source ROUND = Source.fromMemory(WORK, "G.4");
  private static final Source RUPTURE = Source.fromMemory(WORK, "G.1");
  private static final Source TORSION = Source.fromMemory(WORK, "H.2");

  /**
   * Flat webs. Inputs b, t, edges, A_v, A_vn, F_tu, k_t, E, F_sy, B_s, D_s, C_s, φ_v, Ω_v, φ_u,
   * Ω_u; steps F_s, V_n, V_c. With W_t also the torque T_c.
   */
  public static final Procedure FLAT_WEBS = flat();

  /** Round tubes. Inputs R_b, t, L_v in place of b, t, edges. */
  public static final Procedure ROUND_TUBE = round();

  private ShearStrength() {}

  /** What flat and round walls have in common. */
  private record Given(
      Reference area,
      Reference net,
      Reference torsionModulus,
      Reference ultimate,
      Reference notch,
      Reference modulus,
      Reference yield,
      Reference intercept,
      Reference slope,
      Reference end,
      Factors shear,
      Factors rupture) {

    static Given inputs(Procedure.Builder p) {
      return new Given(
          Symbols.area(p, "A_v", "area of the webs, or half the area of a round tube"),
          Symbols.area(p, "A_vn", "the same less holes"),
          Symbols.modulusOfSection(p, "W_t", "torque over its greatest shear stress"),
          Symbols.tensionUltimate(p),
          Symbols.ratio(p, "k_t", "tension coefficient of the alloy"),
          Symbols.modulus(p),
          Symbols.stress(p, "F_sy", "shear yield strength"),
          Symbols.stress(p, "B_s", "intercept, shear"),
          Symbols.stress(p, "D_s", "slope, shear"),
          Symbols.ratio(p, "C_s", "slenderness where the elastic range begins, shear"),
          Factors.inputs(p, "v", "shear and torsion"),
          Factors.inputs(p, "u", "rupture"));
    }

    void design(Procedure.Builder p, Reference strength) {
      Reference nominal =
          p.step("V_n", "nominal strength, shear", Dimension.FORCE, strength.times(area), RUPTURE);
      Reference torn =
          p.step(
              "V_nu",
              "nominal strength, rupture in shear",
              Dimension.FORCE,
              ultimate.times(0.6).times(net).over(notch),
              RUPTURE);
      p.step(
          "V_c",
          "design strength in shear",
          Dimension.FORCE,
          min(shear.applied(nominal), rupture.applied(torn)),
          RUPTURE);
      p.step(
          "T_c",
          "design strength in torsion, warping left out",
          Dimension.MOMENT,
          shear.applied(strength.times(torsionModulus)),
          TORSION);
    }
  }

  private static Procedure flat() {
    Procedure.Builder p =
        Procedure.named("adm-shear", "Shear and torsion of flat walls, Aluminum Design Manual");
    Reference width = Symbols.length(p, "b", "clear height of the web");
    Reference thickness = Symbols.length(p, "t", "thickness of the web");
    Reference edges = p.input("edges", "edges held, 1 or 2", Dimension.NONE, Domain.POSITIVE);
    Given given = Given.inputs(p);
    Reference slenderness = p.step("λ", "slenderness", Dimension.NONE, width.over(thickness), FLAT);
    Reference factor =
        p.step(
            "k_e",
            "factor for the edges held",
            Dimension.NONE,
            choose(less(edges, number(1.5)), number(3.0), number(1.25)),
            FLAT);
    given.design(
        p,
        new ThreeRanges(
                slenderness,
                given.yield(),
                given.intercept(),
                factor.times(given.slope()),
                given.end().over(factor),
                pi().pow(2).times(given.modulus()).over(factor.times(slenderness).pow(2)))
            .write(p, new ThreeRanges.Names("λ_1", "λ_2", "F_s", "shear"), FLAT));
    return p.build();
  }

  private static Procedure round() {
    Procedure.Builder p =
        Procedure.named(
            "adm-shear-round", "Shear and torsion of round tubes, Aluminum Design Manual");
    Reference radius = Symbols.length(p, "R_b", "radius to the middle of the wall");
    Reference thickness = Symbols.length(p, "t", "thickness");
    Reference length =
        Symbols.length(p, "L_v", "length between places of full support of the wall");
    Given given = Given.inputs(p);
    Expression along = length.over(radius).pow(0.25);
    Reference slenderness =
        p.step(
            "λ",
            "equivalent slenderness",
            Dimension.NONE,
            radius.over(thickness).pow(0.625).times(along).times(2.9),
            ROUND);
    given.design(
        p,
        new ThreeRanges(
                slenderness,
                given.yield(),
                given.intercept().times(1.3),
                given.slope().times(1.63),
                given.end().over(1.25),
                pi().pow(2).times(1.3).times(given.modulus()).over(slenderness.times(1.25).pow(2)))
            .write(p, new ThreeRanges.Names("λ_1", "λ_2", "F_s", "shear"), ROUND));
    return p.build();
  }
}
