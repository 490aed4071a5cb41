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
import spanledger.memberdesign.MemberJudgement;
import spanledger.memberdesign.MemberUse;
import spanledger.resistance.member.MemberCase;
import spanledger.resistance.member.PreparedMember;
import spanledger.resistance.member.Use;

/**
 * Members that a code sees as the same case, each with the worst of every check. The workbook shows
 * one calculation for all of them; the results file has every member.
 */
final class MemberGroups {

  /**
   * One check of a group.
   *
   * @param use the check
   * @param governing the worst of it among the group's members
   */
  record Shown(Use use, Governing governing) {
    Cut cut() {
      return DeflectionSheet.cut(governing);
    }
  }

  /**
   * Members alike.
   *
   * @param number from 1
   * @param prepared the case, as prepared for one of them
   * @param members their names
   * @param uses the worst of every check
   */
  record Group(int number, PreparedMember prepared, Set<String> members, List<Shown> uses) {

    /** Number, section and length, to tell it in tables. */
    String name() {
      return number + ": " + prepared.member().section().name();
    }

    /** The cuts of its uses, each once. */
    List<Cut> cuts() {
      Map<String, Cut> distinct = new LinkedHashMap<>();
      uses.forEach(use -> distinct.putIfAbsent(use.cut().key(), use.cut()));
      return List.copyOf(distinct.values());
    }
  }

  private final List<Group> groups;
  private final IdentityHashMap<Governing, Group> byGoverning = new IdentityHashMap<>();

  private MemberGroups(List<Group> groups) {
    this.groups = List.copyOf(groups);
    for (Group group : groups) {
      group.uses().forEach(use -> byGoverning.put(use.governing(), group));
    }
  }

  /** No member is judged by a code. */
  static MemberGroups none() {
    return new MemberGroups(List.of());
  }

  static MemberGroups of(MemberJudgement judgement) {
    Map<MemberCase, List<MemberUse>> alike = new LinkedHashMap<>();
    for (MemberUse use : judgement.uses()) {
      alike.computeIfAbsent(nameless(use.prepared().member()), k -> new ArrayList<>()).add(use);
    }
    List<Group> groups = new ArrayList<>();
    for (List<MemberUse> uses : alike.values()) {
      groups.add(group(groups.size() + 1, uses));
    }
    return new MemberGroups(groups);
  }

  private static MemberCase nameless(MemberCase own) {
    return new MemberCase(
        "",
        own.section(),
        own.alloy(),
        own.lengths(),
        own.moments(),
        own.welds(),
        own.holes(),
        own.declared());
  }

  private static Group group(int number, List<MemberUse> uses) {
    Set<String> members = new TreeSet<>();
    Map<Integer, MemberUse> worst = new LinkedHashMap<>();
    for (MemberUse use : uses) {
      members.add(use.member().member().name());
      worst.merge(
          use.index(), use, (a, b) -> a.governing().value() >= b.governing().value() ? a : b);
    }
    return new Group(
        number,
        uses.get(0).prepared(),
        members,
        worst.values().stream().map(use -> new Shown(use.use(), use.governing())).toList());
  }

  List<Group> groups() {
    return groups;
  }

  /** The group that is used most. */
  Group worst() {
    return groups.stream()
        .max(Comparator.comparingDouble(MemberGroups::greatest))
        .orElseThrow(() -> new IllegalStateException("No member was judged."));
  }

  private static double greatest(Group group) {
    return group.uses().stream().mapToDouble(use -> use.governing().value()).max().orElse(0);
  }

  /** The cuts of all groups. */
  List<Cut> cuts() {
    return groups.stream().flatMap(group -> group.cuts().stream()).toList();
  }

  /** The group that a verdict rests on, if it is shown. */
  Optional<Group> of(Governing governing) {
    return Optional.ofNullable(byGoverning.get(governing));
  }
}
