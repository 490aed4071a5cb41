package spanledger.resistance.en1999;

import java.util.ArrayList;
import java.util.List;
import spanledger.material.BucklingClass;
import spanledger.procedure.CompiledProcedure;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Figured;
import spanledger.resistance.member.MemberSection;
import spanledger.resistance.member.Working;
import spanledger.section.outline.Point;
import spanledger.section.plate.Plate;
import spanledger.section.plate.PlateKind;

/** Works out the effective sections of a member: in compression and for each sense of bending. */
final class EffectiveSections {

  private static final CompiledProcedure BENT = WallInBending.PROCEDURE.compile();
  private static final CompiledProcedure PRESSED = WallInCompression.PROCEDURE.compile();
  private static final CompiledProcedure ROUND = RoundWall.PROCEDURE.compile();
  private static final CompiledProcedure STRIP = SoftenedStrip.PROCEDURE.compile();
  private static final CompiledProcedure BENDING = EffectiveBending.PROCEDURE.compile();
  private static final CompiledProcedure COMPRESSION = EffectiveCompression.PROCEDURE.compile();

  /** The neutral axis has settled when a pass moves it by less than this, per depth. */
  private static final double SETTLED = 1e-5;

  private static final int MOST_PASSES = 12;

  private final Inputs inputs;
  private final Softening softening;
  private final List<Working> workings;

  EffectiveSections(Inputs inputs, Softening softening, List<Working> workings) {
    this.inputs = inputs;
    this.softening = softening;
    this.workings = workings;
  }

  /** Sums over walls and softened strips. */
  record Sums(Feed area, Feed first, Feed second, Feed number, Feed reserve, List<Working> walls) {}

  /** The areas of the compressed section. */
  record Compressed(Working section, Feed area, Feed areaSoftened) {}

  private MemberSection section() {
    return inputs.section();
  }

  private Feed number(Figured figured) {
    return new Feed.Given(figured.value(), figured.origin(), figured.source());
  }

  private Feed constant(double value, String words) {
    return new Feed.Given(value, words, Clause.GEOMETRY);
  }

  private Working.Feeding limits(Working.Feeding run, Plate wall) {
    boolean outstand = isOutstand(wall);
    boolean unsymmetrical = outstand && !section().doublySymmetric();
    String row =
        "wall."
            + (outstand ? "outstand" : "internal")
            + (inputs.alloy().bucklingClass() == BucklingClass.A ? ".A" : ".B")
            + (softening.along() ? ".welded." : ".");
    return inputs
        .strength(run)
        .given("β_1", inputs.figures().figured(row + "beta1"))
        .given("β_2", inputs.figures().figured(row + "beta2"))
        .given("β_3", inputs.figures().figured(row + "beta3"))
        .given("C_1", inputs.figures().figured(row + "C1"))
        .given("C_2", inputs.figures().figured(row + "C2"))
        .given("u", Inputs.yes(unsymmetrical, "outstand of an unsymmetrical section"));
  }

  static boolean isOutstand(Plate wall) {
    return wall.kind() == PlateKind.OUTSTAND || wall.kind() == PlateKind.STIFFENED_OUTSTAND;
  }

  private Working add(Working working) {
    workings.add(working);
    return working;
  }

  Compressed compressed() {
    Feed area = number(inputs.ofSection(section().properties().area(), "A"));
    Feed firstY = constant(0, "full section");
    Feed firstZ = constant(0, "full section");
    Feed number = constant(1, "before the first wall");
    List<Working> walls = new ArrayList<>();
    for (Plate wall : section().walls()) {
      String label = wall.name() + ", compression";
      if (wall.kind() == PlateKind.ROUND) {
        Working run =
            add(
                round(
                    wall, label, inputs.ofSection(section().properties().secondMomentY(), "I_y")));
        walls.add(run);
        area = run.feed("A");
        number = run.feed("class_s");
      } else if (wall.kind() != PlateKind.FREE) {
        Point middle = wall.start().towards(wall.end(), 0.5);
        Working run =
            add(
                limits(Working.of(PRESSED, label), wall)
                    .given("b", inputs.ofSection(wall.width(), wall.name() + ", b"))
                    .given("t", inputs.ofSection(wall.thickness(), wall.name() + ", t"))
                    .given("y_m", inputs.ofSection(middle.y(), wall.name() + ", y_m"))
                    .given("z_m", inputs.ofSection(middle.z(), wall.name() + ", z_m"))
                    .with("A_0", area)
                    .with("S_y0", firstY)
                    .with("S_z0", firstZ)
                    .with("class_0", number)
                    .run());
        walls.add(run);
        area = run.feed("A");
        firstY = run.feed("S_y");
        firstZ = run.feed("S_z");
        number = run.feed("class_s");
      }
    }
    Feed softened = softened(area, walls, "compression");
    Working section =
        add(
            inputs
                .yielding(Working.of(COMPRESSION, "compression"))
                .with("A", area)
                .with("A_haz", softened)
                .with("S_y", firstY)
                .with("S_z", firstZ)
                .run());
    return new Compressed(section, area, softened);
  }

  private Feed softened(Feed area, List<Working> walls, String label) {
    Feed left = area;
    for (Softening.Strip strip : softening.strips()) {
      left =
          add(strip(strip, strip.label() + ", " + label, 0, 1, 1)
                  .with("ρ_c", localOf(strip.wall(), walls))
                  .with("v_n", constant(-reach(), "all of the section compressed"))
                  .with("A_0", left)
                  .with("S_0", constant(0, "not needed"))
                  .with(
                      "I_0",
                      number(inputs.ofSection(section().properties().secondMomentY(), "I_y")))
                  .run())
              .feed("A");
    }
    return left;
  }

  /** The area that welds along the member leave, without local buckling. */
  Feed softenedArea() {
    return softened(
        number(inputs.ofSection(section().properties().area(), "A")), List.of(), "full section");
  }

  private double reach() {
    return section().up() + section().down() + section().right() + section().left();
  }

  private Feed localOf(Plate wall, List<Working> walls) {
    return walls.stream()
        .filter(run -> run.label().startsWith(wall.name() + ","))
        .findFirst()
        .map(run -> run.feed("ρ_c"))
        .orElse(constant(1, "no local buckling"));
  }

  private Working.Feeding strip(
      Softening.Strip strip, String label, double along, double across, double sense) {
    return Working.of(STRIP, label)
        .given(
            "v_1", inputs.ofSection(sense * dot(strip.start(), along, across) + 0.0, strip.label()))
        .given(
            "v_2", inputs.ofSection(sense * dot(strip.end(), along, across) + 0.0, strip.label()))
        .given("w", inputs.ofSection(strip.width(), strip.label() + ", width"))
        .given("t", inputs.ofSection(strip.wall().thickness(), strip.wall().name() + ", t"))
        .given("ρ_o", strip.soft());
  }

  private static double dot(Point point, double y, double z) {
    return point.y() * y + point.z() * z;
  }

  private Working round(Plate wall, String label, Figured inertia) {
    return limits(Working.of(ROUND, label), wall)
        .given("D", inputs.ofSection(wall.width(), "D"))
        .given("t", inputs.ofSection(wall.thickness(), "t"))
        .given("A_0", inputs.ofSection(section().properties().area(), "A"))
        .given("I_0", inertia)
        .run();
  }

  /** The section bent so that the fibres on one side are compressed. */
  Working bent(Bending bending) {
    Feed axis = constant(0, "centroid of the full section");
    for (int pass = 1; ; pass++) {
      String label = bending.words() + (pass == 1 ? "" : ", pass " + pass);
      Working result = add(pass(bending, label, axis));
      if (result.value("δ_n") < SETTLED || pass == MOST_PASSES) {
        return result;
      }
      axis = result.feed("v_n");
    }
  }

  private Working pass(Bending bending, String label, Feed axis) {
    Sums sums = sums(bending, label, axis);
    for (Softening.Strip strip : softening.strips()) {
      Working run =
          add(
              strip(
                      strip,
                      strip.label() + ", " + label,
                      bending.alongY(),
                      bending.alongZ(),
                      bending.sense())
                  .with("ρ_c", localOf(strip.wall(), sums.walls()))
                  .with("v_n", axis)
                  .with("A_0", sums.area())
                  .with("S_0", sums.first())
                  .with("I_0", sums.second())
                  .run());
      sums =
          new Sums(
              run.feed("A"),
              run.feed("S"),
              run.feed("I"),
              sums.number(),
              sums.reserve(),
              sums.walls());
    }
    return inputs
        .yielding(Working.of(BENDING, label))
        .with("v_0", axis)
        .with("A", sums.area())
        .with("S", sums.first())
        .with("I", sums.second())
        .given("e_c", inputs.ofSection(bending.compressedFibre(section()), "compressed fibre"))
        .given("e_t", inputs.ofSection(bending.stretchedFibre(section()), "stretched fibre"))
        .given("W_el", inputs.ofSection(bending.elasticModulus(section()), "W_el"))
        .given("W_pl", inputs.ofSection(bending.plasticModulus(section()), "W_pl"))
        .with("class_s", sums.number())
        .with("r_s", sums.reserve())
        .given("w", Inputs.yes(softening.along(), "welded along"))
        .run();
  }

  private Sums sums(Bending bending, String label, Feed axis) {
    Figured inertia = inputs.ofSection(bending.secondMoment(section()), "I");
    Feed area = number(inputs.ofSection(section().properties().area(), "A"));
    Feed first = constant(0, "full section");
    Feed second = number(inertia);
    Feed number = constant(1, "before the first wall");
    Feed reserve = constant(1, "before the first wall");
    List<Working> walls = new ArrayList<>();
    for (Plate wall : section().walls()) {
      String name = wall.name() + ", " + label;
      Working run;
      if (wall.kind() == PlateKind.ROUND) {
        run = add(round(wall, name, inertia));
      } else if (wall.kind() == PlateKind.FREE) {
        continue;
      } else {
        run =
            add(
                limits(Working.of(BENT, name), wall)
                    .given(
                        "v_1",
                        inputs.ofSection(bending.place(wall.start()), wall.name() + ", start"))
                    .given(
                        "v_2", inputs.ofSection(bending.place(wall.end()), wall.name() + ", end"))
                    .given("b", inputs.ofSection(wall.width(), wall.name() + ", b"))
                    .given("t", inputs.ofSection(wall.thickness(), wall.name() + ", t"))
                    .given("o", Inputs.yes(isOutstand(wall), "outstand"))
                    .with("v_n", axis)
                    .with("A_0", area)
                    .with("S_0", first)
                    .with("I_0", second)
                    .with("class_0", number)
                    .with("r_0", reserve)
                    .run());
      }
      walls.add(run);
      area = run.feed("A");
      first = run.feed("S");
      second = run.feed("I");
      number = run.feed("class_s");
      reserve = run.feed("r_s");
    }
    return new Sums(area, first, second, number, reserve, walls);
  }
}
