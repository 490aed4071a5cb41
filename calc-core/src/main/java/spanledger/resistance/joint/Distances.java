package spanledger.resistance.joint;

import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.number;

import java.util.ArrayList;
import java.util.List;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.Figured;
import spanledger.resistance.member.Working;

/** Distances of a hole from ends, edges and other holes: geometry, not strength. */
final class Distances {

  private static final String[][] WAYS = {
    {"e1", "end distance"},
    {"e2", "edge distance"},
    {"p1", "distance of holes along the force"},
    {"p2", "distance of holes across the force"}
  };

  /** Least and greatest distances, per diameter of the hole. */
  static final Procedure EN1999 =
      define(
          "en1999-distances",
          "Distances of holes, EN 1999-1-1",
          true,
          JointSource.en1999("8.5.1, Table 8.2"));

  /** Least distances, per diameter of the bolt. */
  static final Procedure FACTORED =
      define(
          "bolt-distances",
          "Distances of bolts",
          false,
          Source.fromMemory(
              "Aluminum Design Manual 2020, J.3.2, J.3.3; AS/NZS 1664.1:1997", "5.1, 5.3"));

  private static final CompiledProcedure EN1999_COMPILED = EN1999.compile();
  private static final CompiledProcedure FACTORED_COMPILED = FACTORED.compile();

  private Distances() {}

  static JointCheck en1999(CodeFigures figures, HoleInPlate hole) {
    HoleInputs inputs = new HoleInputs(hole);
    Working.Feeding run =
        Working.of(EN1999_COMPILED, hole.name())
            .given("k_e1", figures.figured(JointFigures.END_LEAST))
            .given("k_e2", figures.figured(JointFigures.EDGE_LEAST))
            .given("k_p1", figures.figured(JointFigures.PITCH_LEAST))
            .given("k_p2", figures.figured(JointFigures.GAUGE_LEAST))
            .given("k_et", figures.figured(JointFigures.END_MOST_THICKNESS))
            .given("k_el", figures.figured(JointFigures.END_MOST_LENGTH))
            .given("k_pt", figures.figured(JointFigures.PITCH_MOST_THICKNESS))
            .given("k_pl", figures.figured(JointFigures.PITCH_MOST_LENGTH));
    return done(inputs.all(run), "EN 1999-1-1, Table 8.2", true);
  }

  static JointCheck factored(CodeFigures figures, Bolt bolt, HoleInPlate hole, String clause) {
    HoleInputs inputs = new HoleInputs(hole);
    Figured end = figures.figured(JointFigures.END_LEAST);
    Figured pitch = figures.figured(JointFigures.PITCH_LEAST);
    Working.Feeding run =
        inputs
            .near(Working.of(FACTORED_COMPILED, hole.name()))
            .given("k_e1", end)
            .given("k_e2", end)
            .given("k_p1", pitch)
            .given("k_p2", pitch);
    return done(new BoltInputs(bolt).diameter(run), clause, false);
  }

  private static JointCheck done(Working.Feeding run, String clause, boolean most) {
    Working working = run.run();
    List<JointUse> uses = new ArrayList<>();
    for (String[] way : WAYS) {
      uses.add(
          new JointUse(
              "η_" + way[0], "least " + way[1], clause, "least_" + way[0], "have_" + way[0]));
      if (most) {
        uses.add(
            new JointUse(
                "η_most_" + way[0],
                "greatest " + way[1],
                clause,
                way[0].replace("1", "_1").replace("2", "_2"),
                "most_" + way[0]));
      }
    }
    return new JointCheck(working, uses);
  }

  private static Procedure define(String name, String title, boolean most, Source source) {
    JointSteps p = new JointSteps(name, title);
    Reference diameter =
        most ? p.size("d_0", "diameter of the hole") : p.size("d", "diameter of the bolt");
    Expression edgeMost = number(0);
    Expression pitchMost = number(0);
    List<Reference> actual = new ArrayList<>();
    for (String[] way : WAYS) {
      actual.add(
          p.length(
              way[0].replace("1", "_1").replace("2", "_2"), way[1] + ", 0 if nothing is near"));
    }
    if (most) {
      Reference thickness = p.size("t", "thickness of the thinner plate");
      Reference edgeThickness = p.factor("k_et", "greatest end distance, times the thickness");
      Reference edgeLength = p.size("k_el", "greatest end distance, length added");
      Reference pitchThickness = p.factor("k_pt", "greatest distance of holes per thickness");
      Reference pitchLength = p.size("k_pl", "greatest distance of holes");
      edgeMost =
          p.step(
              "most_e",
              "greatest end or edge distance, exposed plates",
              edgeThickness.times(thickness).plus(edgeLength),
              source);
      pitchMost =
          p.step(
              "most_p",
              "greatest distance of holes",
              min(pitchThickness.times(thickness), pitchLength),
              source);
    }
    for (int i = 0; i < WAYS.length; i++) {
      String way = WAYS[i][0];
      Reference factor = p.factor("k_" + way, "least " + WAYS[i][1] + " per diameter");
      Reference least =
          p.step("least_" + way, "least " + WAYS[i][1], factor.times(diameter), source);
      Reference have =
          p.step(
              "have_" + way,
              WAYS[i][1] + "; where nothing is near, the least one",
              choose(JointSteps.isThere(actual.get(i)), actual.get(i), least),
              source);
      p.step(
          "η_" + way,
          "least " + WAYS[i][1] + ", use",
          choose(JointSteps.isThere(actual.get(i)), least.over(have), number(0)),
          source);
      if (most) {
        Reference limit =
            p.step("most_" + way, "greatest " + WAYS[i][1], i < 2 ? edgeMost : pitchMost, source);
        p.step(
            "η_most_" + way, "greatest " + WAYS[i][1] + ", use", actual.get(i).over(limit), source);
      }
    }
    return p.build();
  }
}
