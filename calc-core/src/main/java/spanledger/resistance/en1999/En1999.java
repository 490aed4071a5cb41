package spanledger.resistance.en1999;

import java.util.ArrayList;
import java.util.List;
import spanledger.material.Alloy;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.resistance.member.BucklingMode;
import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.Figured;
import spanledger.resistance.member.Hole;
import spanledger.resistance.member.MemberCase;
import spanledger.resistance.member.MemberCode;
import spanledger.resistance.member.MemberSection;
import spanledger.resistance.member.NotCheckable;
import spanledger.resistance.member.Preparation;
import spanledger.resistance.member.Working;
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

  private static final CompiledProcedure BEARING = WebBearing.PROCEDURE.compile();

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

  /**
   * A concentrated load on the webs of a member.
   *
   * @param place where it stands
   * @param alloy of the member
   * @param force in all webs together, N, never negative
   * @param bendingUse use of the bending resistance there, axial force included, for example {@code
   *     η_section} of the check at that cut
   * @return a run whose steps {@code η_F} and {@code η_FM} must be at most 1
   */
  public Working bearing(BearingPlace place, Alloy alloy, double force, double bendingUse) {
    Figured each = new Figured(force / place.webs(), place.name() + ", per web", place.source());
    String what = place.name();
    Source source = place.source();
    return Working.of(BEARING, what)
        .given("F", each)
        .given("η_M", bendingUse, what + ", bending", source)
        .given("kind", place.kind().number(), what + ", kind", source)
        .given("s_s", place.length(), what + ", length", source)
        .given("c", place.fromEnd(), what + ", from the end", source)
        .given("a", place.panel(), what + ", panel", source)
        .given("h_w", place.depth(), what + ", web", source)
        .given("t_w", place.webThickness(), what + ", web", source)
        .given("t_f", place.flangeThickness(), what + ", flange", source)
        .given("b_f", place.flangeWidth(), what + ", flange", source)
        .given("n_f", place.flangeSides(), what + ", flange", source)
        .given("f_o", alloy.proofStrength(), "alloy " + alloy.designation(), alloy.source())
        .given("E", alloy.youngsModulus(), "alloy " + alloy.designation(), alloy.source())
        .given("γ_M1", figures.figured(Figures.YIELDING))
        .run();
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
