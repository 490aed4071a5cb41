package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import spanledger.jointdesign.JointRun;

/**
 * The cases in which the workbook shows kinds of joints, each with a short name by which tables and
 * worked pages call it.
 */
final class JointCases {

  /**
   * A member end under a combination.
   *
   * @param kind the kind of joint
   * @param number within the kind, from 1
   * @param run what was worked out
   */
  record Case(String kind, int number, JointRun run) {

    /** For example {@code beam-on-bracket, case 3}. */
    String name() {
      return kind + ", case " + number;
    }

    /** The number, the member end and the combination; other than those of all other cases. */
    String words() {
      return number + ": " + run.end().name() + ", " + run.words();
    }
  }

  /**
   * What words of a run say without the name of the member end.
   *
   * @param ofJoint whether they began with it; other words say what all joints may share
   */
  record Part(boolean ofJoint, String words) {}

  /** What is said of the member end as a whole. */
  private static final String WHOLE = "member end";

  private final Map<String, List<Case>> byKind = new LinkedHashMap<>();
  private final IdentityHashMap<JointRun, Case> byRun = new IdentityHashMap<>();
  private final List<String> ends;

  JointCases(JointGroups groups) {
    for (JointRun run : groups.runs()) {
      List<Case> own = byKind.computeIfAbsent(run.joint().name(), k -> new ArrayList<>());
      Case one = new Case(run.joint().name(), own.size() + 1, run);
      own.add(one);
      byRun.put(run, one);
    }
    TreeSet<String> names = new TreeSet<>();
    groups.shown().forEach(one -> names.addAll(one.ends()));
    ends = new ArrayList<>(names);
    // The longer name first: one may be the beginning of another.
    ends.sort(Comparator.comparingInt(String::length).reversed());
  }

  /** The kinds of joints. */
  List<String> kinds() {
    return List.copyOf(byKind.keySet());
  }

  /** The cases of a kind. */
  List<Case> of(String kind) {
    return byKind.getOrDefault(kind, List.of());
  }

  /** All cases, kind by kind. */
  List<Case> all() {
    List<Case> all = new ArrayList<>();
    byKind.values().forEach(all::addAll);
    return all;
  }

  Case of(JointRun run) {
    return Required.of(byRun.get(run), "A joint under " + run.instance().words());
  }

  /** What a label or an origin says without the member end. */
  Part part(String words) {
    for (String end : ends) {
      if (words.equals(end)) {
        return new Part(true, WHOLE);
      }
      if (words.startsWith(end + ", ")) {
        return new Part(true, words.substring(end.length() + 2));
      }
    }
    return new Part(false, words);
  }
}
