package spanledger.cli;

import java.util.List;
import java.util.Optional;
import spanledger.action.Actions;
import spanledger.frame.Member;
import spanledger.frame.MemberRole;
import spanledger.job.Job;
import spanledger.job.StandingBlock;
import spanledger.memberdesign.MemberPick;
import spanledger.overturning.PlateCorner;
import spanledger.overturning.StandingAnalysis;
import spanledger.overturning.StandingStructure;
import spanledger.robustness.RobustnessAnalysis;
import spanledger.robustness.RobustnessResult;
import spanledger.verdict.WholeStructure;

/** Looks at the structure of a job as a whole. */
final class StandingReview {

  private StandingReview() {}

  /** Tipping, sliding and braces left out; empty if the job does not say how it stands. */
  static Optional<WholeStructure> of(Job job, Actions actions) {
    return job.standing().map(block -> of(job, block, actions));
  }

  private static WholeStructure of(Job job, StandingBlock block, Actions actions) {
    StandingStructure structure =
        new StandingStructure(
            job.frame(),
            job.surfaces(),
            job.rails(),
            job.userCases(),
            job.trains(),
            job.rules(),
            plates(job));
    MemberPick leftOut = block.leftOut().orElseGet(() -> new MemberPick(braces(job)));
    Optional<RobustnessResult> robustness =
        new RobustnessAnalysis(job.frame(), actions, job.rails(), job.rules()).run(leftOut);
    return new WholeStructure(
        new StandingAnalysis(structure, block.standing(), job.combinations().equilibrium()).run(),
        robustness);
  }

  private static List<PlateCorner> plates(Job job) {
    return job.jointDesign()
        .map(design -> design.plateCorners(job.frame().supports()))
        .orElse(List.of());
  }

  private static List<String> braces(Job job) {
    return job.frame().members().stream()
        .filter(m -> m.role() == MemberRole.BRACE)
        .map(Member::name)
        .toList();
  }
}
