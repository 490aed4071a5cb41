package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import spanledger.envelope.Governing;
import spanledger.envelope.Instance;
import spanledger.envelope.Station;
import spanledger.jointdesign.JointJudgement.OpenCheck;
import spanledger.memberdesign.MemberForces;
import spanledger.resistance.joint.JointCheck;
import spanledger.resistance.joint.JointUse;

/** Keeps the worst of every check of every face of joints and feet. */
final class WorstChecks {

  private static final int FORCES = 6;

  private final List<JointFinding> findings = new ArrayList<>();
  private final Set<OpenCheck> open = new LinkedHashSet<>();

  /**
   * Works a joint out under all states.
   *
   * @param calculation from the combination and N, V_y, V_z, T, M_y, M_z at the member end
   */
  void over(
      JointEnd end,
      Station station,
      Iterable<? extends MemberForces> states,
      BiFunction<Instance, double[], JointRun> calculation) {
    Map<String, JointFinding> worst = new LinkedHashMap<>();
    double[] forces = new double[FORCES];
    for (MemberForces state : states) {
      state.at(station, forces);
      try {
        JointRun run = calculation.apply(state.instance(), forces);
        for (FaceRun face : run.faces()) {
          face.open().forEach(what -> open.add(new OpenCheck(end.name(), what)));
          face.checks().forEach(check -> keepWorse(run, face, check, station, worst));
        }
      } catch (IllegalArgumentException e) {
        open.add(
            new OpenCheck(end.name(), "under " + state.instance().words() + ": " + e.getMessage()));
        break;
      }
    }
    findings.addAll(worst.values());
  }

  private static void keepWorse(
      JointRun run,
      FaceRun face,
      JointCheck check,
      Station station,
      Map<String, JointFinding> worst) {
    for (JointUse use : check.uses()) {
      double value = check.working().value(use.symbol());
      String key = face.name() + "|" + use.words() + "|" + use.clause();
      JointFinding known = worst.get(key);
      if (known == null || !(value <= known.governing().value())) {
        worst.put(
            key,
            new JointFinding(run, face, check, use, new Governing(run.instance(), station, value)));
      }
    }
  }

  /** Adds a check that cannot be made. */
  void open(OpenCheck check) {
    open.add(check);
  }

  List<JointFinding> findings() {
    return findings;
  }

  List<OpenCheck> open() {
    return List.copyOf(open);
  }
}
