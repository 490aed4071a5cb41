package spanledger.verdict;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spanledger.analysis.InternalForces;
import spanledger.envelope.Findings;
import spanledger.envelope.StrengthFinding;
import spanledger.envelope.StrengthMeasure;
import spanledger.frame.Member;
import spanledger.procedure.CompiledProcedure;
import spanledger.resistance.JointDemand;
import spanledger.resistance.ResistanceFactors;
import spanledger.resistance.StressUtilisation;

/**
 * Judges stresses. Where walls are too slender, or not known, an elastic stress check that holds is
 * not a pass, unless a member code judges them.
 */
final class StrengthVerdicts {

  private static final CompiledProcedure USE = StressUtilisation.PROCEDURE.compile();

  private static final CompiledProcedure DEMAND = JointDemand.PROCEDURE.compile();

  private final ResistanceFactors factors;

  StrengthVerdicts(ResistanceFactors factors) {
    this.factors = factors;
  }

  /**
   * @param byCode names of the members whose walls a member code judges
   */
  List<Verdict> of(Findings findings, Set<String> byCode) {
    Map<String, Double> walls = new HashMap<>();
    for (StrengthFinding finding : findings.strength()) {
      if (finding.measure() == StrengthMeasure.WALL) {
        walls.put(finding.member().name(), finding.governing().value());
      }
    }
    List<Verdict> verdicts = new ArrayList<>();
    for (StrengthFinding finding : findings.strength()) {
      double wall = walls.getOrDefault(finding.member().name(), 0.0);
      boolean judged = byCode.contains(finding.member().name());
      if (finding.measure() != StrengthMeasure.WALL) {
        verdicts.add(stress(finding, wall, judged));
      } else if (!judged) {
        verdicts.add(wall(finding));
      }
      if (finding.scope() == StrengthFinding.Scope.POST_BASE
          && finding.measure() == StrengthMeasure.BENDING) {
        verdicts.add(connection(finding));
      }
    }
    return verdicts;
  }

  private static Verdict wall(StrengthFinding finding) {
    Member member = finding.member();
    String check = StrengthMeasure.WALL.words();
    if (!member.section().properties().platesKnown()) {
      return Verdict.notChecked(
          CheckGroup.MEMBER_STRENGTH,
          check,
          member.name(),
          "the walls of section "
              + member.section().name()
              + " are not known; give their slenderness with the section");
    }
    double value = finding.governing().value();
    boolean stocky = value <= 1;
    return new Verdict(
        CheckGroup.MEMBER_STRENGTH,
        check,
        member.name(),
        stocky ? Status.PASSED : Status.NOT_CHECKED,
        value,
        1,
        "",
        Optional.of(finding.governing()),
        stocky ? "" : "class 4 walls: an effective section is needed, which is not made here yet");
  }

  /** The moment that the post hands to its connection; that connection is not checked here. */
  private static Verdict connection(StrengthFinding finding) {
    InternalForces forces = finding.forces();
    double[] demand =
        DEMAND.run(forces.shearY(), forces.shearZ(), forces.momentY(), forces.momentZ());
    return new Verdict(
        CheckGroup.GUARDRAIL,
        "post connection moment",
        finding.member().name(),
        Status.DEMAND,
        demand[DEMAND.slot("M_res")],
        Double.NaN,
        "N·mm",
        Optional.of(finding.governing()),
        String.format(
            Locale.ROOT,
            "with N %.0f N (tension positive), V %.0f N, T %.0f N·mm at the same cut",
            forces.axial(),
            demand[DEMAND.slot("V_res")],
            forces.torque()));
  }

  private Verdict stress(StrengthFinding finding, double wall, boolean byCode) {
    Member member = finding.member();
    double value = finding.governing().value();
    double capacity = capacity(member, finding.measure());
    Status status = value <= 1 ? Status.PASSED : Status.FAILED;
    String remark = "";
    boolean wallsKnown = member.section().properties().platesKnown();
    if (status == Status.PASSED && finding.measure() != StrengthMeasure.SHEAR && !byCode) {
      if (!wallsKnown) {
        status = Status.NOT_CHECKED;
        remark = "elastic stress is within strength, but local buckling cannot be ruled out";
      } else if (wall > 1) {
        status = Status.NOT_CHECKED;
        remark =
            String.format(
                Locale.ROOT,
                "elastic stress is within strength, but the walls are class 4 (%.2f of the limit)",
                wall);
      }
    }
    return new Verdict(
        group(finding),
        check(finding),
        member.name(),
        status,
        value * capacity,
        capacity,
        "MPa",
        Optional.of(finding.governing()),
        remark);
  }

  private double capacity(Member member, StrengthMeasure measure) {
    double[] slots = USE.newSlots();
    slots[USE.slot("f_o")] = member.alloy().proofStrength();
    slots[USE.slot("φ_R")] = factors.factor();
    slots[USE.slot("γ_M")] = factors.divisor();
    USE.evaluate(slots);
    return slots[USE.slot(measure == StrengthMeasure.SHEAR ? "τ_d" : "f_d")];
  }

  private static CheckGroup group(StrengthFinding finding) {
    return finding.scope() == StrengthFinding.Scope.ALL
        ? CheckGroup.MEMBER_STRENGTH
        : CheckGroup.GUARDRAIL;
  }

  private static String check(StrengthFinding finding) {
    return switch (finding.scope()) {
      case ALL -> finding.measure().words();
      case GUARDRAIL -> "rail under guardrail loads";
      case POST_BASE -> "post at its base, " + finding.measure().words();
    };
  }
}
