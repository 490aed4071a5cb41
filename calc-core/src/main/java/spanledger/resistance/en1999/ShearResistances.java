package spanledger.resistance.en1999;

import java.util.List;
import org.jspecify.annotations.Nullable;
import spanledger.procedure.CompiledProcedure;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Figured;
import spanledger.resistance.member.Hole;
import spanledger.resistance.member.MemberCase;
import spanledger.resistance.member.MemberSection;
import spanledger.resistance.member.SectionForm;
import spanledger.resistance.member.Working;
import spanledger.section.plate.Plate;
import spanledger.section.plate.PlateKind;

/** Works out the shear resistances of a member along both axes. */
final class ShearResistances {

  private static final CompiledProcedure WALL = ShearWall.PROCEDURE.compile();
  private static final CompiledProcedure SHEAR = Shear.PROCEDURE.compile();

  /** Walls that lean further from the force than this take no part: cos 30°. */
  private static final double UPRIGHT = 0.866;

  private final Inputs inputs;
  private final MemberCase member;
  private final Softening softening;
  private final List<Working> workings;

  ShearResistances(Inputs inputs, MemberCase member, Softening softening, List<Working> workings) {
    this.inputs = inputs;
    this.member = member;
    this.softening = softening;
    this.workings = workings;
  }

  Working along(boolean z) {
    MemberSection section = inputs.section();
    String label = "V_" + (z ? "z" : "y");
    boolean round = section.walls().stream().anyMatch(w -> w.kind() == PlateKind.ROUND);
    if (round || section.form() == SectionForm.SOLID) {
      Figured area = inputs.ofSection(section.properties().area(), "A");
      return add(
          inputs
              .yielding(Working.of(SHEAR, label))
              .given("A_1", area)
              .given(
                  "k_v",
                  inputs.figures().figured(round ? Figures.SHEAR_ROUND : Figures.SHEAR_SOLID))
              .run());
    }
    Working last = null;
    for (Plate wall : section.walls()) {
      double length = wall.start().distance(wall.end());
      double height =
          Math.abs(z ? wall.end().z() - wall.start().z() : wall.end().y() - wall.start().y());
      if (height >= UPRIGHT * length) {
        last = add(wall(wall, height, label, last));
      }
    }
    Working.Feeding shear = inputs.yielding(Working.of(SHEAR, label));
    if (last == null) {
      double peak =
          z ? section.properties().peakShearAreaZ() : section.properties().peakShearAreaY();
      shear.given("A_1", inputs.ofSection(peak, "tau_A (no wall along the force)"));
    } else {
      shear.with("A_1", last.feed("A_v"));
    }
    return add(shear.given("k_v", new Figured(1, "walls along the force", Clause.GEOMETRY)).run());
  }

  private Working wall(Plate wall, double height, String label, @Nullable Working before) {
    double soft =
        softening.strips().stream()
            .filter(strip -> strip.wall().name().equals(wall.name()))
            .mapToDouble(Softening.Strip::width)
            .sum();
    Figured strength =
        softening.strips().stream()
            .filter(strip -> strip.wall().name().equals(wall.name()))
            .map(Softening.Strip::soft)
            .findFirst()
            .orElse(new Figured(1, "no weld", Inputs.CASE));
    Feed none = new Feed.Given(0, "before the first wall", Clause.GEOMETRY);
    return inputs
        .youngsModulus(inputs.strength(Working.of(WALL, wall.name() + ", " + label)))
        .given("b", inputs.ofSection(wall.width(), wall.name() + ", b"))
        .given("t", inputs.ofSection(wall.thickness(), wall.name() + ", t"))
        .given("h_w", inputs.ofSection(height, wall.name() + ", height"))
        .given("d_s", new Figured(holes(wall), "holes in " + wall.name(), Inputs.CASE))
        .given("w_s", new Figured(soft, "welds along " + wall.name(), Inputs.CASE))
        .given("ρ_o", strength)
        .with("A_v0", before == null ? none : before.feed("A_v"))
        .given("ξ_v", inputs.figures().figured(Figures.SHEAR_SLENDER))
        .run();
  }

  /** The most height that holes in one cut take from a wall. */
  private double holes(Plate wall) {
    double most = 0;
    for (List<Hole> group : HoleGroups.of(member.holes())) {
      most =
          Math.max(
              most,
              group.stream()
                  .filter(hole -> hole.plate().equals(wall.name()))
                  .mapToDouble(Hole::diameter)
                  .sum());
    }
    return most;
  }

  private Working add(Working working) {
    workings.add(working);
    return working;
  }
}
