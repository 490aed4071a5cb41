package spanledger.resistance.en1999;

import java.util.ArrayList;
import java.util.List;
import spanledger.resistance.member.BucklingMode;
import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.Hole;
import spanledger.resistance.member.MemberCase;
import spanledger.resistance.member.MemberCode;
import spanledger.resistance.member.MemberSection;
import spanledger.resistance.member.NotCheckable;
import spanledger.resistance.member.Preparation;
import spanledger.section.plate.PlateKind;

/**
 * Member checks of EN 1999-1-1:2007 with its amendments, from memory.
 *
 * <p>How a member is checked: {@link #prepare} it once; take an {@link
 * spanledger.resistance.member.PreparedMember#evaluator}; give it the effects at every cut. Cuts
 * are needed at {@link MemberCase#weakPlaces}, besides where effects are greatest.
 *
 * <p>Not checkable, and said so: walls that are not known for sure, a round wall among flat ones, a
 * buckling mode without a length, welds without a place or of an alloy without strengths beside
 * welds, welds and holes in walls that the section does not have.
 *
 * @param figures partial factors, limits and imperfection factors, as data
 */
public record En1999(CodeFigures figures) implements MemberCode {

  /** The id of this code and of its figures. */
  public static final String ID = "en-1999-1-1";

  @Override
  public String id() {
    return ID;
  }

  @Override
  public String title() {
    return figures.title();
  }

  @Override
  public Preparation prepare(MemberCase member) {
    List<NotCheckable.Lack> lacks = lacks(member);
    return lacks.isEmpty()
        ? new MemberPreparation(figures, member).prepare()
        : new NotCheckable(member, lacks);
  }

  private List<NotCheckable.Lack> lacks(MemberCase member) {
    List<NotCheckable.Lack> lacks = new ArrayList<>();
    MemberSection section = member.section();
    section
        .doubt()
        .ifPresent(
            doubt ->
                lacks.add(
                    new NotCheckable.Lack(
                        "section " + section.name() + ": " + doubt,
                        "confirm or correct its walls")));
    boolean round = section.walls().stream().anyMatch(wall -> wall.kind() == PlateKind.ROUND);
    if (round && section.walls().size() > 1) {
      lacks.add(
          new NotCheckable.Lack(
              "section " + section.name() + " has a round wall among others",
              "give the walls of which buckling matters"));
    }
    for (BucklingMode mode : BucklingMode.values()) {
      if (!member.lengths().containsKey(mode)) {
        lacks.add(
            new NotCheckable.Lack(
                "member " + member.name() + " has no length for " + mode.words(),
                "declare it, or have it found by analysis"));
      }
    }
    lacks.addAll(new Softening(new Inputs(figures, member.alloy(), section), member).lacks());
    for (Hole hole : member.holes()) {
      if (section.wall(hole.plate()).isEmpty()) {
        lacks.add(Softening.unknownWall(section, "hole " + hole.name(), hole.plate()));
      }
    }
    return lacks;
  }
}
