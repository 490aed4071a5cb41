package spanledger.resistance.en1999;

import java.util.List;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Figured;
import spanledger.resistance.member.Hole;
import spanledger.resistance.member.MemberSection;
import spanledger.resistance.member.Working;
import spanledger.section.outline.Point;
import spanledger.section.plate.Plate;

/** Works out what holes in one cut leave of a section. */
final class NetSections {

  private static final CompiledProcedure STRIP = SoftenedStrip.PROCEDURE.compile();
  private static final CompiledProcedure BENDING = EffectiveBending.PROCEDURE.compile();

  private final Inputs inputs;
  private final List<Working> workings;

  NetSections(Inputs inputs, List<Working> workings) {
    this.inputs = inputs;
    this.workings = workings;
  }

  /** Area and moduli of a cut. */
  record Net(Feed area, Feed modulusY, Feed modulusZ) {}

  /**
   * The cut through a group of holes.
   *
   * @param area what welds along the member leave of the section
   */
  Net of(List<Hole> group, Feed area) {
    Working y = bent(group, area, Bending.Y_NEGATIVE);
    Working z = bent(group, area, Bending.Z_POSITIVE);
    return new Net(y.feed("A"), y.feed("W_eff"), z.feed("W_eff"));
  }

  private Working bent(List<Hole> group, Feed area, Bending bending) {
    MemberSection section = inputs.section();
    Feed left = area;
    Feed first = new Feed.Given(0, "full section", Clause.GEOMETRY);
    Feed second = feed(inputs.ofSection(bending.secondMoment(section), "I"));
    String cut = "holes " + group.get(0).name() + (bending.aboutY() ? ", about y" : ", about z");
    for (int i = 0; i < group.size(); i++) {
      Hole hole = group.get(i);
      Working run = add(strip(hole, cut + ", hole " + (i + 1), bending, left, first, second));
      left = run.feed("A");
      first = run.feed("S");
      second = run.feed("I");
    }
    return add(
        inputs
            .yielding(Working.of(BENDING, cut))
            .given("v_0", new Figured(0, "not sought", Clause.GEOMETRY))
            .with("A", left)
            .with("S", first)
            .with("I", second)
            .given("e_c", inputs.ofSection(bending.compressedFibre(section), "fibre"))
            .given("e_t", inputs.ofSection(bending.stretchedFibre(section), "other fibre"))
            .given("W_el", inputs.ofSection(bending.elasticModulus(section), "W_el"))
            .given("W_pl", inputs.ofSection(bending.plasticModulus(section), "W_pl"))
            .given("class_s", new Figured(4, "only the modulus is sought", Clause.GEOMETRY))
            .given("r_s", new Figured(0, "only the modulus is sought", Clause.GEOMETRY))
            .given("w", Inputs.yes(false, "only the modulus is sought"))
            .run());
  }

  private Working strip(
      Hole hole, String label, Bending bending, Feed area, Feed first, Feed second) {
    Plate wall = inputs.section().wall(hole.plate()).orElseThrow();
    double length = wall.start().distance(wall.end());
    Point from =
        wall.start().towards(wall.end(), (hole.fromStart() - hole.diameter() / 2) / length);
    Point to = wall.start().towards(wall.end(), (hole.fromStart() + hole.diameter() / 2) / length);
    Source source = hole.source();
    return Working.of(STRIP, label)
        .given("v_1", bending.place(from), "hole, edge", source)
        .given("v_2", bending.place(to), "hole, other edge", source)
        .given("w", hole.diameter(), "hole, diameter", source)
        .given("t", inputs.ofSection(wall.thickness(), wall.name() + ", t"))
        .given("ρ_o", 0, "a hole", source)
        .given("ρ_c", 1, "a hole", source)
        .given("v_n", 0, "a hole", source)
        .with("A_0", area)
        .with("S_0", first)
        .with("I_0", second)
        .run();
  }

  private static Feed feed(Figured figured) {
    return new Feed.Given(figured.value(), figured.origin(), figured.source());
  }

  private Working add(Working working) {
    workings.add(working);
    return working;
  }
}
