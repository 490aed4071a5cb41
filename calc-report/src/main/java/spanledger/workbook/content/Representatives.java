package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import spanledger.envelope.DeflectionFinding;
import spanledger.envelope.Findings;
import spanledger.envelope.Governing;
import spanledger.envelope.StandingHeight;
import spanledger.envelope.StrengthFinding;
import spanledger.frame.Member;
import spanledger.frame.MemberEnd;

/**
 * The worst of members that are made alike: same role, section, alloy, length and joints. The
 * workbook shows the worst in full and names the members it stands for; the results file has every
 * member.
 */
final class Representatives {

  private final Findings findings;
  private final IdentityHashMap<Governing, Set<String>> covered = new IdentityHashMap<>();
  private final IdentityHashMap<Governing, StrengthFinding> strengthByGoverning =
      new IdentityHashMap<>();
  private final IdentityHashMap<Governing, DeflectionFinding> deflectionByGoverning =
      new IdentityHashMap<>();

  private Representatives(
      List<StrengthFinding> strength, List<DeflectionFinding> deflections, Findings all) {
    this.findings = new Findings(strength, deflections, all.reactions());
    strength.forEach(f -> strengthByGoverning.put(f.governing(), f));
    deflections.forEach(f -> deflectionByGoverning.put(f.governing(), f));
  }

  static Representatives of(Findings all) {
    Map<String, StrengthFinding> strength = new LinkedHashMap<>();
    Map<String, Set<String>> members = new HashMap<>();
    for (StrengthFinding finding : all.strength()) {
      String key = make(finding.member()) + "|" + finding.scope() + "|" + finding.measure();
      members.computeIfAbsent(key, k -> new TreeSet<>()).add(finding.member().name());
      strength.merge(key, finding, (a, b) -> worse(a.governing(), b.governing()) ? a : b);
    }
    Map<String, DeflectionFinding> deflections = new LinkedHashMap<>();
    for (DeflectionFinding finding : all.deflections()) {
      String key = make(finding.member()) + "|" + finding.kind() + "|" + way(finding);
      members.computeIfAbsent(key, k -> new TreeSet<>()).add(finding.member().name());
      deflections.merge(key, finding, (a, b) -> worse(a.governing(), b.governing()) ? a : b);
    }
    Representatives chosen =
        new Representatives(
            new ArrayList<>(strength.values()), new ArrayList<>(deflections.values()), all);
    strength.forEach((key, f) -> chosen.covered.put(f.governing(), members.get(key)));
    deflections.forEach((key, f) -> chosen.covered.put(f.governing(), members.get(key)));
    return chosen;
  }

  /** Sway limits differ with the height, and sway along X is no measure of that along Y. */
  private static String way(DeflectionFinding finding) {
    boolean level = Math.abs(finding.direction().z()) < 0.5;
    if (finding.kind() != DeflectionFinding.Kind.SWAY) {
      return Boolean.toString(level);
    }
    double height = StandingHeight.measure(finding.member()).place().z();
    return (finding.direction().x() != 0 ? "X" : "Y") + Math.round(height);
  }

  private static boolean worse(Governing a, Governing b) {
    return a.value() >= b.value();
  }

  /** What members have in common that are made alike. */
  static String make(Member member) {
    return member.role()
        + "|"
        + member.section().name()
        + "|"
        + member.alloy().designation()
        + "|"
        + Math.round(member.length())
        + "|"
        + member.nodes().size()
        + "|"
        + joints(member.start())
        + "|"
        + joints(member.end());
  }

  private static String joints(MemberEnd end) {
    return end.torsion() + "," + end.aboutY() + "," + end.aboutZ();
  }

  /** The strength finding that a verdict rests on, if it is shown. */
  Optional<StrengthFinding> strength(Governing governing) {
    return Optional.ofNullable(strengthByGoverning.get(governing));
  }

  /** The deflection finding that a verdict rests on, if it is shown. */
  Optional<DeflectionFinding> deflection(Governing governing) {
    return Optional.ofNullable(deflectionByGoverning.get(governing));
  }

  /** The findings shown. */
  Findings findings() {
    return findings;
  }

  /** The members that a finding stands for, by name; empty if the finding is not shown. */
  Set<String> covered(Governing governing) {
    return covered.getOrDefault(governing, Set.of());
  }
}
