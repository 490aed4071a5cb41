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
import spanledger.jointdesign.JointFinding;
import spanledger.jointdesign.JointJudgement;
import spanledger.jointdesign.JointRun;

/**
 * Member ends with one kind of joint, and the worst of every check among them. The workbook shows
 * one calculation for all of them; the results file has every end.
 */
final class JointGroups {

  /**
   * The worst of one check of one kind of joint.
   *
   * @param finding the worst
   * @param ends the member ends with that joint
   */
  record Shown(JointFinding finding, Set<String> ends) {

    /** The kind of joint. */
    String joint() {
      return finding.joint().name();
    }

    /** The face and what is checked there. */
    String words() {
      return finding.faceName() + ": " + finding.use().words();
    }
  }

  private final List<Shown> shown;
  private final List<JointRun> runs = new ArrayList<>();
  private final IdentityHashMap<Governing, Shown> byGoverning = new IdentityHashMap<>();

  private JointGroups(List<Shown> shown) {
    this.shown = List.copyOf(shown);
    for (Shown one : shown) {
      byGoverning.put(one.finding().governing(), one);
      if (runs.stream().noneMatch(run -> run.name().equals(one.finding().run().name()))) {
        runs.add(one.finding().run());
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
    List<Shown> shown = new ArrayList<>();
    for (JointFinding finding : worst.values()) {
      shown.add(new Shown(finding, Required.of(ends.get(finding.joint().name()), "A joint")));
    }
    return new JointGroups(shown);
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

  /** The cuts at the member ends of all runs. */
  List<Cut> cuts() {
    List<Cut> cuts = new ArrayList<>();
    for (Shown one : shown) {
      Cut cut = cut(one.finding());
      if (cuts.stream().noneMatch(c -> c.key().equals(cut.key()))) {
        cuts.add(cut);
      }
    }
    return cuts;
  }

  private static Cut cut(JointFinding finding) {
    return DeflectionSheet.cut(finding.governing());
  }

  /** The cut of a run. */
  Cut cut(JointRun run) {
    return shown.stream()
        .filter(one -> one.finding().run().name().equals(run.name()))
        .map(one -> cut(one.finding()))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("A joint is not in the workbook."));
  }

  /** What a verdict rests on, if it is shown. */
  Optional<Shown> of(Governing governing) {
    return Optional.ofNullable(byGoverning.get(governing));
  }
}
