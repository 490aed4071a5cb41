package spanledger.resistance.adm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.material.TemperStrengths;
import spanledger.material.TemperTable;
import spanledger.resistance.member.BucklingMode;
import spanledger.resistance.member.Hole;
import spanledger.resistance.member.MemberCase;
import spanledger.resistance.member.MemberSection;
import spanledger.resistance.member.NotCheckable;
import spanledger.resistance.member.Weld;
import spanledger.section.plate.Plate;
import spanledger.section.plate.PlateKind;

/** What a member lacks to be checked by either publication. */
public final class Lacks {

  private final MemberCase member;
  private final List<NotCheckable.Lack> lacks = new ArrayList<>();

  private Lacks(MemberCase member) {
    this.member = member;
  }

  /** Everything that is missing; nothing if the member can be checked. */
  public static List<NotCheckable.Lack> of(MemberCase member, TemperTable tempers) {
    Lacks found = new Lacks(member);
    found.section();
    Optional<TemperStrengths> temper = tempers.find(member.alloy());
    if (temper.isEmpty()) {
      found.add(
          "alloy "
              + member.alloy().designation()
              + " has no compressive yield strength and temper family",
          "choose one of " + String.join(", ", tempers.designations()));
    }
    found.lengths();
    found.welds(temper);
    for (Hole hole : member.holes()) {
      found.wall("hole " + hole.name(), hole.plate());
    }
    return List.copyOf(found.lacks);
  }

  private void section() {
    MemberSection section = member.section();
    section
        .doubt()
        .ifPresent(
            doubt ->
                add("section " + section.name() + ": " + doubt, "confirm or correct its walls"));
    for (Plate plate : SectionElement.withoutRule(section)) {
      add(
          "wall " + plate.name() + " of section " + section.name() + " is curved with a free edge",
          "give it as a flat wall of the same developed width");
    }
    boolean round = section.walls().stream().anyMatch(p -> p.kind() == PlateKind.ROUND);
    if (round && section.walls().size() > 1) {
      add(
          "section " + section.name() + " has a round wall among others",
          "give the walls of which buckling matters");
    }
  }

  private void lengths() {
    for (BucklingMode mode : BucklingMode.values()) {
      if (!member.lengths().containsKey(mode)) {
        add(
            "member " + member.name() + " has no length for " + mode.words(),
            "declare it, or have it found by analysis");
      }
    }
  }

  private void welds(Optional<TemperStrengths> temper) {
    if (member.welds().isEmpty()) {
      return;
    }
    boolean known =
        member.alloy().heatAffected().isPresent()
            && temper.map(t -> t.weldedCompressiveYield().isPresent()).orElse(true);
    if (!known) {
      add(
          "alloy " + member.alloy().designation() + " has no strengths beside welds",
          "add them to its row");
    }
    for (Weld weld : member.welds()) {
      if (weld instanceof Weld.WithoutPlace) {
        add(
            "weld " + weld.name() + " has no place",
            "say where along the member or in which wall it is");
      } else if (weld instanceof Weld.Along along) {
        wall("weld " + weld.name(), along.plate());
      }
    }
  }

  private void wall(String what, String name) {
    if (member.section().wall(name).isEmpty()) {
      add(
          what + " is in wall " + name + ", which section " + member.section().name() + " has not",
          "use one of "
              + String.join(", ", member.section().walls().stream().map(Plate::name).toList()));
    }
  }

  private void add(String found, String mend) {
    lacks.add(new NotCheckable.Lack(found, mend));
  }
}
