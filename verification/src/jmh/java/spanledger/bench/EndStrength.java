package spanledger.bench;

import spanledger.action.SegmentLoad;
import spanledger.analysis.CaseResult;
import spanledger.frame.Member;
import spanledger.procedure.CompiledProcedure;
import spanledger.resistance.ElasticStress;
import spanledger.resistance.StressUtilisation;
import spanledger.section.SectionProperties;

/** Stresses and their utilisation at the ends of segments, by the procedures of the checks. */
final class EndStrength {

  private static final CompiledProcedure STRESS = ElasticStress.PROCEDURE.compile();
  private static final CompiledProcedure USE = StressUtilisation.PROCEDURE.compile();
  private static final int[] FORCES = slots(STRESS, "N", "V_y", "V_z", "T", "M_y", "M_z");
  private static final int[] STRESSES = slots(STRESS, "σ_My", "σ_Mz", "τ", "σ_eq");
  private static final int[] USED = slots(USE, "σ_My", "σ_Mz", "τ", "σ_eq");
  private static final int[] RESULTS = slots(USE, "η_bending", "η_shear", "η_combined");

  private final double[] stress = STRESS.newSlots();
  private final double[] use = USE.newSlots();

  EndStrength(Member member) {
    SectionProperties section = member.section().properties();
    stress[STRESS.slot("A")] = section.area();
    stress[STRESS.slot("W_el_y")] = section.elasticModulusY();
    stress[STRESS.slot("W_el_z")] = section.elasticModulusZ();
    stress[STRESS.slot("tau_A_y")] = section.peakShearAreaY();
    stress[STRESS.slot("tau_A_z")] = section.peakShearAreaZ();
    stress[STRESS.slot("W_t")] = section.torsionModulus();
    use[USE.slot("f_o")] = member.alloy().proofStrength();
    use[USE.slot("φ_R")] = 1;
    use[USE.slot("γ_M")] = 1.1;
  }

  /** The greatest utilisation of any measure at the end of any segment. */
  double worst(CaseResult result) {
    double worst = 0;
    for (SegmentLoad load : result.loadCase().segmentLoads()) {
      double[] ends = result.endForces(load.segment());
      for (int end = 0; end < 2; end++) {
        for (int i = 0; i < FORCES.length; i++) {
          stress[FORCES[i]] = ends[6 * end + i];
        }
        STRESS.evaluate(stress);
        for (int i = 0; i < USED.length; i++) {
          use[USED[i]] = stress[STRESSES[i]];
        }
        USE.evaluate(use);
        for (int place : RESULTS) {
          worst = Math.max(worst, use[place]);
        }
      }
    }
    return worst;
  }

  private static int[] slots(CompiledProcedure procedure, String... symbols) {
    int[] slots = new int[symbols.length];
    for (int i = 0; i < slots.length; i++) {
      slots[i] = procedure.slot(symbols[i]);
    }
    return slots;
  }
}
