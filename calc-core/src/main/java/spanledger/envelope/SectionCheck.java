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
final class SectionCheck {

  private static final CompiledProcedure STRESS = ElasticStress.PROCEDURE.compile();
  private static final CompiledProcedure USE = StressUtilisation.PROCEDURE.compile();
  private static final CompiledProcedure WALL = WallSlenderness.PROCEDURE.compile();
  private static final int FORCES = 6;
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

  SectionCheck(Member member, ResistanceFactors factors) {
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

  /** Works out the stresses only, for ranking. */
  void rank(double[] forces, int from) {
    System.arraycopy(forces, from, stress, 0, FORCES);
    STRESS.evaluate(stress);
  }

  /** The ranking figure of a measure, MPa, after {@link #rank}. */
  double ranked(StrengthMeasure measure) {
    return switch (measure) {
      case BENDING -> stress[SIGMA_MY] + stress[SIGMA_MZ];
      case SHEAR -> stress[TAU];
      case COMBINED, WALL -> stress[SIGMA_EQ];
    };
  }

  /** Works out every measure. */
  void evaluate(double[] forces) {
    rank(forces, 0);
    use[USE_MY] = stress[SIGMA_MY];
    use[USE_MZ] = stress[SIGMA_MZ];
    use[USE_TAU] = stress[TAU];
    use[USE_EQ] = stress[SIGMA_EQ];
    USE.evaluate(use);
    wall[WALL_N] = stress[SIGMA_N];
    wall[WALL_MY] = stress[SIGMA_MY];
    wall[WALL_MZ] = stress[SIGMA_MZ];
    wall[WALL_DESIGN] = use[DESIGN];
    WALL.evaluate(wall);
  }

  /** A measure after {@link #evaluate}; wall slenderness is 0 where the walls are not known. */
  double value(StrengthMeasure measure) {
    return switch (measure) {
      case BENDING -> use[BENDING];
      case SHEAR -> use[SHEAR];
      case COMBINED -> use[COMBINED];
      case WALL -> wallsKnown ? wall[WALL_USE] : 0;
    };
  }

  /** A ranking stress, MPa, per design strength. */
  double utilisation(StrengthMeasure measure, double stress) {
    return stress / (measure == StrengthMeasure.SHEAR ? use[DESIGN_SHEAR] : use[DESIGN]);
  }
}
