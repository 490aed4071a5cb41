package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import spanledger.envelope.Governing;
import spanledger.jointdesign.FootPlace;
import spanledger.jointdesign.JointFinding;
import spanledger.jointdesign.JointJudgement;
import spanledger.jointdesign.JointRun;
import spanledger.resistance.joint.JointCheck;

/**
 * Member ends with one kind of joint, and the worst of every check among them. The workbook shows
 * one calculation for all of them; the results file has every end.
 */
final class JointGroups {

  /** Less than this is nothing but rounding. */
  private static final double NOTHING = 1e-9;

  /**
   * The worst of one check of one kind of joint.
   *
   * @param finding the worst
   * @param host the finding whose run shows it: itself, or for a check that no load uses, one that
   *     is shown anyway
   * @param ends the member ends with that joint
   */
  record Shown(JointFinding finding, JointFinding host, Set<String> ends) {

    /** The joint under the combination in which the check is shown. */
    JointRun run() {
      return host.run();
    }

    /** The kind of joint. */
    String joint() {
      return finding.joint().name();
    }

    /** The face and what is checked there. */
    String words() {
      return finding.faceName() + ": " + finding.use().words();
    }

    /** The same check of all parts of its face under a combination. */
    List<JointCheck> under(JointRun other) {
      return checks(finding, other);
    }
  }

  private static List<JointCheck> checks(JointFinding finding, JointRun run) {
    return run.faces().stream()
        .filter(face -> face.name().equals(finding.faceName()))
        .flatMap(face -> face.checks().stream())
        .filter(check -> check.uses().contains(finding.use()))
        .toList();
  }

  private final List<Shown> shown;
  private final List<JointRun> runs = new ArrayList<>();
  private final IdentityHashMap<Governing, Shown> byGoverning = new IdentityHashMap<>();
  private final IdentityHashMap<JointRun, Cut> cuts = new IdentityHashMap<>();

  private JointGroups(List<Shown> shown) {
    this.shown = List.copyOf(shown);
    for (Shown one : shown) {
      byGoverning.put(one.finding().governing(), one);
      if (cuts.putIfAbsent(one.run(), cut(one)) == null) {
        runs.add(one.run());
      }
    }
  }

  /** No joint is judged. */
  static JointGroups none() {
    return new JointGroups(List.of());
  }

  static JointGroups of(JointJudgement judgement) {
    Map<String, Set<String>> ends = new LinkedHashMap<>();
    Map<String, JointFinding> worst = new LinkedHashMap<>();
    for (JointFinding finding : judgement.findings()) {
      String joint = finding.joint().name();
      ends.computeIfAbsent(joint, j -> new TreeSet<>()).add(finding.end().name());
      worst.merge(
          joint
              + "|"
              + finding.faceName()
              + "|"
              + finding.use().words()
              + "|"
              + finding.use().clause(),
          finding,
          (a, b) -> a.governing().value() >= b.governing().value() ? a : b);
    }
    List<JointFinding> used = worst.values().stream().filter(JointGroups::isUsed).toList();
    List<Shown> shown = new ArrayList<>();
    for (JointFinding finding : worst.values()) {
      JointFinding host = isUsed(finding) ? finding : elsewhere(finding, used);
      shown.add(new Shown(finding, host, Required.of(ends.get(finding.joint().name()), "A joint")));
    }
    return new JointGroups(shown);
  }

  /** Whether loads use a check, or it has no value. */
  private static boolean isUsed(JointFinding finding) {
    return finding.hangsOnLoads() && !(finding.governing().value() < NOTHING);
  }

  /** One whose run is shown anyway and has the check, too; itself if there is none. */
  private static JointFinding elsewhere(JointFinding finding, List<JointFinding> used) {
    return used.stream()
        .filter(other -> other.joint().name().equals(finding.joint().name()))
        .filter(other -> !checks(finding, other.run()).isEmpty())
        .max(Comparator.comparingDouble(other -> other.governing().value()))
        .orElse(finding);
  }

  /** The worst of each check, joint by joint. */
  List<Shown> shown() {
    return shown;
  }

  /** The joints under the combinations that govern some check, each once. */
  List<JointRun> runs() {
    return runs;
  }

  /** The worst of each kind of joint under load. */
  List<Shown> worst() {
    Map<String, Shown> worst = new LinkedHashMap<>();
    Comparator<Shown> byUse = Comparator.comparingDouble(s -> s.finding().governing().value());
    for (Shown one : shown) {
      if (!one.finding().hangsOnLoads()) {
        continue;
      }
      worst.merge(one.joint(), one, (a, b) -> byUse.compare(a, b) >= 0 ? a : b);
    }
    return List.copyOf(worst.values());
  }

  /** The cuts at the member ends of all runs; feet have none. */
  List<Cut> cuts() {
    List<Cut> all = new ArrayList<>();
    for (JointRun run : runs) {
      if (run.end() instanceof FootPlace) {
        continue;
      }
      Cut cut = cut(run);
      if (all.stream().noneMatch(c -> c.key().equals(cut.key()))) {
        all.add(cut);
      }
    }
    return all;
  }

  private static Cut cut(Shown one) {
    return DeflectionSheet.cut(one.host().governing());
  }

  /** The cut of a run. */
  Cut cut(JointRun run) {
    return Required.of(cuts.get(run), "A joint under " + run.instance().words());
  }

  /** What a verdict rests on, if it is shown. */
  Optional<Shown> of(Governing governing) {
    return Optional.ofNullable(byGoverning.get(governing));
  }
}
