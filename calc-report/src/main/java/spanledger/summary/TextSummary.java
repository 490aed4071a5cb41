package spanledger.summary;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import spanledger.frame.Member;
import spanledger.jointdesign.JointFinding;
import spanledger.jointdesign.JointJudgement;
import spanledger.resistance.joint.ContactAdvice;
import spanledger.verdict.Assessment;
import spanledger.verdict.CheckGroup;
import spanledger.verdict.Status;
import spanledger.verdict.Verdict;

/** The result at a glance, for a terminal. */
public final class TextSummary {

  /** Letters of a check that fit beside where it is worst. */
  private static final int CHECK = 28;

  private static final String ROW = "%6s %-5s %-" + CHECK + "s %-20s %s";
  private static final int MOST_ROWS = 12;

  /** Of several subjects that have the same said of them, so many are named. */
  private static final int MOST_SUBJECTS = 4;

  private static final String RULE = "-".repeat(100);

  /** What fails first, then what loads use, then sizes and tightening that are as they must be. */
  private static final Comparator<List<Verdict>> SIZES_LAST =
      Comparator.comparingInt(same -> isKeptSize(same.get(0)) ? 1 : 0);

  private TextSummary() {}

  /**
   * The summary.
   *
   * @param title the job's title
   * @param rules the rule set and combination set, in words
   */
  public static String of(String title, String rules, Assessment assessment) {
    StringBuilder text = new StringBuilder();
    line(text, title);
    line(text, rules);
    line(
        text,
        assessment.frame().members().size()
            + " members, "
            + assessment.frame().nodes().size()
            + " nodes, "
            + assessment.actions().combinations().size()
            + " combinations; equilibrium met to "
            + String.format(Locale.ROOT, "%.1e", assessment.proof().worstResidual())
            + " of the loads");
    line(text, RULE);
    ranked(text, assessment);
    demands(text, assessment);
    metals(text, assessment);
    kept(text, assessment);
    notChecked(text, assessment);
    line(text, RULE);
    line(text, closing(assessment));
    for (String caution : Cautions.LINES) {
      line(text, caution);
    }
    return text.toString();
  }

  private static void ranked(StringBuilder text, Assessment assessment) {
    List<Verdict> ranked =
        assessment.verdicts().stream()
            .filter(v -> v.status() == Status.PASSED || v.status() == Status.FAILED)
            .sorted(Comparator.comparingDouble(Verdict::utilisation).reversed())
            .toList();
    Map<String, List<Verdict>> alike = new LinkedHashMap<>();
    Map<String, String> kinds = kinds(assessment);
    for (Verdict verdict : ranked) {
      String kind = kinds.getOrDefault(verdict.subject(), verdict.subject());
      alike
          .computeIfAbsent(verdict.status() + sort(verdict) + "|" + kind, k -> new ArrayList<>())
          .add(verdict);
    }
    line(text, String.format(Locale.ROOT, ROW, "  used", "", "check", "on", "where"));
    long failed = alike.keySet().stream().filter(k -> k.startsWith("FAILED")).count();
    long shown = Math.min(alike.size(), Math.max(MOST_ROWS, failed));
    alike.values().stream().sorted(SIZES_LAST).limit(shown).forEach(same -> row(text, same, kinds));
    if (alike.size() > shown) {
      line(
          text,
          "  ... and "
              + (alike.size() - shown)
              + " more, less used or sizes that no load changes; all in the workbook");
    }
  }

  /** What is told together: of joints that hold, all checks that loads use, and all others. */
  private static String sort(Verdict verdict) {
    if (verdict.group() != CheckGroup.JOINTS || verdict.status() != Status.PASSED) {
      return verdict.check();
    }
    return isSize(verdict) ? "sizes of joints" : "joints";
  }

  private static boolean isKeptSize(Verdict verdict) {
    return verdict.status() == Status.PASSED && isSize(verdict);
  }

  /** No load changes the sizes of the structure and of joints, nor what tightening does. */
  private static boolean isSize(Verdict verdict) {
    return verdict.group() == CheckGroup.GEOMETRY
        || (verdict.group() == CheckGroup.JOINTS && verdict.instance().isEmpty());
  }

  /** Members of one role and section, and ends with one kind of joint, are alike at a glance. */
  private static Map<String, String> kinds(Assessment assessment) {
    Map<String, String> kinds = new HashMap<>();
    for (Member member : assessment.frame().members()) {
      kinds.put(member.name(), member.role() + "|" + member.section().name());
    }
    for (JointFinding finding :
        assessment.joints().map(JointJudgement::findings).orElse(List.of())) {
      kinds.put(finding.end().name(), finding.joint().name());
    }
    return kinds;
  }

  private static void row(StringBuilder text, List<Verdict> alike, Map<String, String> kinds) {
    Verdict worst = alike.get(0);
    row(text, worst);
    if (worst.group() == CheckGroup.JOINTS) {
      long ends = alike.stream().map(Verdict::subject).distinct().count();
      String kind = kinds.getOrDefault(worst.subject(), worst.subject());
      line(
          text,
          " ".repeat(13)
              + "worst of "
              + counted(alike.size(), "check")
              + " at "
              + counted(ends, "end")
              + " with "
              + kind);
    } else if (alike.size() > 1) {
      line(text, " ".repeat(13) + "worst of " + alike.size() + " alike");
    }
  }

  private static String counted(long number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }

  private static void row(StringBuilder text, Verdict verdict) {
    String status = verdict.status().words();
    String check = verdict.check();
    String on = verdict.subject();
    if (check.length() > CHECK) {
      line(text, String.format(Locale.ROOT, "%6s %-5s %s", used(verdict), status, check));
      line(text, " ".repeat(13) + "on " + on + ": " + where(verdict));
    } else {
      line(text, String.format(Locale.ROOT, ROW, used(verdict), status, check, on, where(verdict)));
    }
  }

  /** A combination without a solution, or a part that is missing, has no utilisation. */
  private static String used(Verdict verdict) {
    return !Double.isFinite(verdict.utilisation())
        ? "-"
        : String.format(Locale.ROOT, "%.1f%%", 100 * verdict.utilisation());
  }

  private static String where(Verdict verdict) {
    if (isSize(verdict)) {
      return verdict.remark();
    }
    return verdict
        .governing()
        .map(g -> g.instance().words() + "; cut at " + g.station().words())
        .orElseGet(
            () ->
                verdict
                    .instance()
                    .filter(i -> !i.words().equals(verdict.subject()))
                    .map(i -> i.words() + "; " + verdict.remark())
                    .orElse(verdict.remark()));
  }

  /** Advice for the surroundings that the job names; for all of them the workbook has it. */
  private static void metals(StringBuilder text, Assessment assessment) {
    List<ContactAdvice> contacts =
        assessment.joints().map(JointJudgement::contacts).orElse(List.of());
    if (contacts.stream().map(ContactAdvice::surroundings).distinct().count() != 1) {
      return;
    }
    line(text, RULE);
    line(
        text,
        "Metals that touch, "
            + contacts.get(0).surroundings().words()
            + " (advice, not a verdict):");
    contacts.forEach(
        advice ->
            line(
                text,
                "  "
                    + advice.words()
                    + ": "
                    + advice.advice()
                    + " ("
                    + advice.source().citation()
                    + ")"));
  }

  /** What the job lets stand that its joints' parts do not give. */
  private static void kept(StringBuilder text, Assessment assessment) {
    Map<String, List<String>> ends = new LinkedHashMap<>();
    for (JointJudgement.Kept one :
        assessment.joints().map(JointJudgement::kept).orElse(List.of())) {
      String why = one.why().reason() + " (" + one.why().source().citation() + ")";
      List<String> alike = ends.computeIfAbsent(why, w -> new ArrayList<>());
      if (!alike.contains(one.end().name())) {
        alike.add(one.end().name());
      }
    }
    if (ends.isEmpty()) {
      return;
    }
    line(text, RULE);
    line(text, "Stiffness as analysed, though the joint's parts give another (word of the job):");
    ends.forEach((why, alike) -> line(text, "  " + some(alike) + ": " + why));
  }

  /** Some of several subjects that have the same said of them. */
  private static String some(List<String> subjects) {
    return subjects.size() <= MOST_SUBJECTS
        ? String.join("; ", subjects)
        : String.join("; ", subjects.subList(0, MOST_SUBJECTS - 1))
            + "; and "
            + (subjects.size() - MOST_SUBJECTS + 1)
            + " more";
  }

  private static void demands(StringBuilder text, Assessment assessment) {
    List<Verdict> demands =
        assessment.verdicts().stream()
            .filter(v -> v.status() == Status.DEMAND && v.group() != CheckGroup.SUPPORT)
            .toList();
    if (demands.isEmpty()) {
      return;
    }
    line(text, RULE);
    line(text, "Handed on to other checks:");
    for (Verdict v : demands) {
      line(
          text,
          String.format(
              Locale.ROOT, "  %-26s %-24s %.4g %s", v.check(), v.subject(), v.demand(), v.unit()));
    }
  }

  private static void notChecked(StringBuilder text, Assessment assessment) {
    if (assessment.count(Status.NOT_CHECKED) == 0) {
      return;
    }
    line(text, RULE);
    line(text, "NOT CHECKED:");
    Map<List<String>, List<String>> alike = new LinkedHashMap<>();
    for (Verdict v : assessment.verdicts()) {
      if (v.status() == Status.NOT_CHECKED) {
        alike
            .computeIfAbsent(List.of(v.check(), v.remark()), k -> new ArrayList<>())
            .add(v.subject());
      }
    }
    alike.forEach(
        (what, subjects) ->
            line(text, "  " + what.get(0) + ", " + some(subjects) + ": " + what.get(1)));
  }

  private static String closing(Assessment assessment) {
    return assessment.count(Status.PASSED)
        + " passed, "
        + assessment.count(Status.FAILED)
        + " FAILED, "
        + assessment.count(Status.NOT_CHECKED)
        + " NOT CHECKED";
  }

  private static void line(StringBuilder text, String line) {
    text.append(line).append('\n');
  }
}
