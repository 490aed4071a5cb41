package spanledger.resistance.en1999;

/** The ids of the figures that EN 1999-1-1 leaves to data. */
public final class Figures {

  /** γ_M1, yielding and buckling. */
  public static final String YIELDING = "gamma.M1";

  /** γ_M2, rupture. */
  public static final String RUPTURE = "gamma.M2";

  /** The part of the net section's tensile strength that counts. */
  public static final String NET = "tension.net";

  /** Part of the area of a solid bar that carries shear. */
  public static final String SHEAR_SOLID = "shear.solid";

  /** Part of the area of a round tube that carries shear. */
  public static final String SHEAR_ROUND = "shear.round";

  /** b/t per ε above which webs buckle in shear. */
  public static final String SHEAR_SLENDER = "shear.slender";

  /** Torsional buckling in general: its α and λ_0. */
  public static final String TORSIONAL = "torsional.general";

  /** Torsional buckling of sections of radiating outstands only. */
  public static final String TORSIONAL_OUTSTANDS = "torsional.outstands";

  /** Lateral-torsional buckling of class 1 and 2 sections. */
  public static final String LATERAL_STOCKY = "lateral.class-1-2";

  /** Lateral-torsional buckling of class 3 and 4 sections. */
  public static final String LATERAL_SLENDER = "lateral.class-3-4";

  /** Softening of metal over 5 mm thick beside TIG welds, on top of that of the alloy table. */
  public static final String TIG_FACTOR = "haz.tig.factor";

  private Figures() {}

  /** α of a buckling curve. */
  public static String imperfection(String curve) {
    return curve + ".alpha";
  }

  /** λ_0 of a buckling curve. */
  public static String plateau(String curve) {
    return curve + ".lambda0";
  }
}
