package spanledger.envelope;

import spanledger.frame.Member;
import spanledger.material.Alloy;
import spanledger.material.BucklingClass;
import spanledger.procedure.CompiledProcedure;
import spanledger.resistance.ElasticStress;
import spanledger.resistance.ResistanceFactors;
import spanledger.resistance.StressUtilisation;
import spanledger.resistance.WallLimits;
import spanledger.resistance.WallSlenderness;
import spanledger.section.SectionProperties;

/**
 * The strength measures of one member from internal forces; reuses its arrays, so one per thread.
 *
 * <p>Internal forces are N, V_y, V_z, T, M_y, M_z throughout.
 */
public final class SectionCheck {

  private static final CompiledProcedure STRESS = ElasticStress.PROCEDURE.compile();
  private static final CompiledProcedure USE = StressUtilisation.PROCEDURE.compile();
  private static final CompiledProcedure WALL = WallSlenderness.PROCEDURE.compile();
  private static final int FORCES = 6;
  private static final int HALVINGS = 24;
  private static final int SIGMA = STRESS.slot("σ");
  private static final int SIGMA_N = STRESS.slot("σ_N");
  private static final int SIGMA_MY = STRESS.slot("σ_My");
  private static final int SIGMA_MZ = STRESS.slot("σ_Mz");
  private static final int TAU = STRESS.slot("τ");
  private static final int SIGMA_EQ = STRESS.slot("σ_eq");

  private static final int USE_MY = USE.slot("σ_My");
  private static final int USE_MZ = USE.slot("σ_Mz");
  private static final int USE_TAU = USE.slot("τ");
  private static final int USE_EQ = USE.slot("σ_eq");
  private static final int DESIGN = USE.slot("f_d");
  private static final int DESIGN_SHEAR = USE.slot("τ_d");
  private static final int BENDING = USE.slot(StrengthMeasure.BENDING.symbol());
  private static final int SHEAR = USE.slot(StrengthMeasure.SHEAR.symbol());
  private static final int COMBINED = USE.slot(StrengthMeasure.COMBINED.symbol());
  private static final int WALL_N = WALL.slot("σ_N");
  private static final int WALL_MY = WALL.slot("σ_My");
  private static final int WALL_MZ = WALL.slot("σ_Mz");
  private static final int WALL_DESIGN = WALL.slot("f_d");
  private static final int WALL_USE = WALL.slot(StrengthMeasure.WALL.symbol());

  private final double[] stress = STRESS.newSlots();
  private final double[] use = USE.newSlots();
  private final double[] wall = WALL.newSlots();
  private final boolean wallsKnown;

  /** For one member. */
  public SectionCheck(Member member, ResistanceFactors factors) {
    SectionProperties section = member.section().properties();
    Alloy alloy = member.alloy();
    wallsKnown = section.platesKnown();
    stress[STRESS.slot("A")] = section.area();
    stress[STRESS.slot("W_el_y")] = section.elasticModulusY();
    stress[STRESS.slot("W_el_z")] = section.elasticModulusZ();
    stress[STRESS.slot("tau_A_y")] = section.peakShearAreaY();
    stress[STRESS.slot("tau_A_z")] = section.peakShearAreaZ();
    stress[STRESS.slot("W_t")] = section.torsionModulus();
    use[USE.slot("f_o")] = alloy.proofStrength();
    use[USE.slot("φ_R")] = factors.factor();
    use[USE.slot("γ_M")] = factors.divisor();
    USE.evaluate(use);
    wall[WALL.slot("f_o")] = alloy.proofStrength();
    wall[WALL.slot("s_web")] = section.webSlenderness();
    wall[WALL.slot("s_flange_int")] = section.innerFlangeSlenderness();
    wall[WALL.slot("s_flange_out")] = section.outstandSlenderness();
    wall[WALL.slot("s_round")] = section.roundSlenderness();
    WallLimits limits = limits(alloy);
    wall[WALL.slot("β3_int")] = limits.inner();
    wall[WALL.slot("β3_out")] = limits.outstand();
  }

  static WallLimits limits(Alloy alloy) {
    return alloy.bucklingClass() == BucklingClass.A ? WallLimits.CLASS_A : WallLimits.CLASS_B;
  }

  /** Works out the stresses only. */
  void rank(double[] forces, int from) {
    System.arraycopy(forces, from, stress, 0, FORCES);
    STRESS.evaluate(stress);
  }

  /**
   * The stress that a measure is ranked by, MPa, after {@link #rank}: it grows with the size of
   * every internal force, and that of two states together is at most the sum of theirs.
   */
  double ranked(StrengthMeasure measure) {
    return switch (measure) {
      case BENDING -> stress[SIGMA_MY] + stress[SIGMA_MZ];
      case SHEAR -> stress[TAU];
      case COMBINED -> stress[SIGMA_EQ];
      case WALL -> stress[SIGMA];
    };
  }

  /** Whether the slenderness of the walls is known. */
  boolean hasWalls() {
    return wallsKnown;
  }

  /** The shear stress after {@link #rank}, MPa. */
  double shear() {
    return stress[TAU];
  }

  /** The normal stress after {@link #rank}, MPa, not negative. */
  double normal() {
    return stress[SIGMA];
  }

  /** What the measure is at most if its ranking stress is at most this, MPa. */
  double bound(StrengthMeasure measure, double ranking) {
    if (measure != StrengthMeasure.WALL) {
      return ranking / (measure == StrengthMeasure.SHEAR ? use[DESIGN_SHEAR] : use[DESIGN]);
    }
    // Walls are never worse than if the greatest stress were even compression.
    return wallsKnown ? wall(-ranking, 0, 0) : 0;
  }

  /**
   * What a measure is at most if no internal force is greater in size than those of {@link #rank}.
   *
   * <p>Walls are worst under the greatest compression, with the greatest bending across the wall or
   * with none: between these, what a gradient of stress spares weighs more than what it adds (the
   * factor of EN 1999-1-1 on b/t times the root of the compression has no peak in between).
   */
  double most(StrengthMeasure measure) {
    if (measure != StrengthMeasure.WALL) {
      return quick(measure);
    }
    if (!wallsKnown) {
      return 0;
    }
    double axial = -Math.abs(stress[SIGMA_N]);
    double aboutY = stress[SIGMA_MY];
    double aboutZ = stress[SIGMA_MZ];
    return Math.max(
        wall(axial, aboutY, aboutZ), Math.max(wall(axial, 0, aboutZ), wall(axial, aboutY, 0)));
  }

  /** A ranking stress without which a measure does not exceed a value, MPa. */
  double needed(StrengthMeasure measure, double value) {
    if (measure != StrengthMeasure.WALL) {
      return value * (measure == StrengthMeasure.SHEAR ? use[DESIGN_SHEAR] : use[DESIGN]);
    }
    if (!wallsKnown) {
      return Double.POSITIVE_INFINITY;
    }
    double low = 0;
    double high = use[DESIGN];
    while (bound(measure, high) < value) {
      low = high;
      high *= 2;
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = 0.5 * (low + high);
      if (bound(measure, middle) < value) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** A measure after {@link #rank}, without its stresses being worked out again. */
  double quick(StrengthMeasure measure) {
    if (measure != StrengthMeasure.WALL) {
      return bound(measure, ranked(measure));
    }
    return wallsKnown ? wall(stress[SIGMA_N], stress[SIGMA_MY], stress[SIGMA_MZ]) : 0;
  }

  private double wall(double axial, double aboutY, double aboutZ) {
    wall[WALL_N] = axial;
    wall[WALL_MY] = aboutY;
    wall[WALL_MZ] = aboutZ;
    wall[WALL_DESIGN] = use[DESIGN];
    WALL.evaluate(wall);
    return wall[WALL_USE];
  }

  /**
   * How the stresses change with the internal forces: stress per unit of each, got by evaluating
   * the procedure on unit forces.
   */
  double[] perUnit() {
    double[] perUnit = new double[FORCES];
    double[] unit = new double[FORCES];
    for (int i = 0; i < FORCES; i++) {
      unit[i] = 1;
      rank(unit, 0);
      perUnit[i] = stress[SIGMA] + stress[TAU];
      unit[i] = 0;
    }
    return perUnit;
  }

  /** Works out every measure. */
  public void evaluate(double[] forces) {
    rank(forces, 0);
    use[USE_MY] = stress[SIGMA_MY];
    use[USE_MZ] = stress[SIGMA_MZ];
    use[USE_TAU] = stress[TAU];
    use[USE_EQ] = stress[SIGMA_EQ];
    USE.evaluate(use);
    wall(stress[SIGMA_N], stress[SIGMA_MY], stress[SIGMA_MZ]);
  }

  /** A measure after {@link #evaluate}; wall slenderness is 0 where the walls are not known. */
  public double value(StrengthMeasure measure) {
    return switch (measure) {
      case BENDING -> use[BENDING];
      case SHEAR -> use[SHEAR];
      case COMBINED -> use[COMBINED];
      case WALL -> wallsKnown ? wall[WALL_USE] : 0;
    };
  }
}
