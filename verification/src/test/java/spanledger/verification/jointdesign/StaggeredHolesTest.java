package spanledger.verification.jointdesign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spanledger.joint.FacePlace;
import spanledger.joint.Ply;
import spanledger.jointdesign.JointFinding;
import spanledger.jointdesign.PlyNet;
import spanledger.provenance.Source;
import spanledger.resistance.joint.NetCut;
import spanledger.resistance.joint.NetLine;
import spanledger.resistance.member.Feed;
import spanledger.verdict.Assessment;
import spanledger.verification.check.AssessedJob;
import spanledger.verification.en1999.LinkedSheet;

/** Net sections of plies along the worst line through their holes. */
class StaggeredHolesTest {

  private static final Source GIVEN = Source.declared("This test");
  private static final double HOLE = 11;
  private static final double THICKNESS = 8;

  @TempDir Path folder;

  /**
   * Three bolts across a shear along w, the middle one 15 mm farther along it, 25 mm apart across.
   * By s²/(4p) a zigzag through all three leaves 100 - 3·11 + 2·15²/(4·25) = 71.5 mm of 100; the
   * straight line through two of them 78 mm.
   */
  @Test
  void theZigzagOfAJobsBoltsIsFound() {
    String face =
        """
        {"name": "side", "normal": "-v", "origin": ["60 mm", "25 mm", "0 mm"],
         "bolts": {"size": "M10", "grade": "A4-70", "head": "hexagon",
           "places": [["-25 mm", "0 mm"], ["0 mm", "15 mm"], ["25 mm", "0 mm"]]},
         "plies": [{"name": "plate", "thickness": "8 mm", "material": "own", "hole": "11 mm",
           "from": ["-50 mm", "-50 mm"], "to": ["50 mm", "50 mm"]}]}
        """;
    Assessment found = AssessedJob.of(folder, JointJobTest.text(face, "start", ""));
    JointFinding net =
        found.joints().orElseThrow().findings().stream()
            .filter(f -> f.use().words().equals("plate in tension at holes"))
            .findFirst()
            .orElseThrow();

    assertThat(net.part()).endsWith("along w");
    assertThat(net.check().working().value("A_net")).isCloseTo(71.5 * 8, within(1e-9));
  }

  /**
   * Holes 14 mm apart across a force along u, staggered by 25 mm: 1.2 · 11 = 13.2 mm pass across if
   * holes are 2.4 · 11 = 26.4 mm apart (EN 1999-1-1, Table 8.2, from memory), and they are √(14² +
   * 25²) = 28.7 mm apart. So 26.4 mm stand against twice 14 mm. Side by side they fail.
   */
  @Test
  void staggeredRowsMayLieNearerToEachOther() {
    assertThat(leastAcross("[\"0 mm\", \"0 mm\"], [\"25 mm\", \"14 mm\"]", "along u"))
        .isCloseTo(26.4 / 28, within(1e-9));
    assertThat(leastAcross("[\"0 mm\", \"0 mm\"], [\"5 mm\", \"14 mm\"]", "along u"))
        .isCloseTo(26.4 / 14, within(1e-9));
  }

  private double leastAcross(String places, String along) {
    String face =
        """
        {"name": "side", "normal": "-v", "origin": ["60 mm", "25 mm", "0 mm"],
         "bolts": {"size": "M10", "grade": "A4-70", "head": "hexagon", "places": [%s]},
         "plies": [{"name": "plate", "thickness": "8 mm", "material": "own", "hole": "11 mm",
           "from": ["-50 mm", "-50 mm"], "to": ["50 mm", "50 mm"]}]}
        """
            .formatted(places);
    return AssessedJob.of(folder, JointJobTest.text(face, "start", ""))
        .joints()
        .orElseThrow()
        .findings()
        .stream()
        .filter(f -> f.use().words().equals("least distance of holes across the force"))
        .flatMap(f -> f.face().checks().stream())
        .filter(c -> c.uses().stream().anyMatch(u -> u.symbol().equals("η_p2")))
        .filter(c -> c.working().label().endsWith(along))
        .mapToDouble(c -> c.working().value("η_p2"))
        .max()
        .orElseThrow();
  }

  /** The same numbers as live formulas, for a line of six legs, more than one run of them takes. */
  @Test
  void aLongZigzagIsTheSameInASpreadsheet() throws IOException {
    List<FacePlace> places = new ArrayList<>();
    for (int i = 0; i < 7; i++) {
      places.add(new FacePlace(i % 2 * 9, 24 * i - 72));
    }
    NetLine line = PlyNet.of("ply", ply(), places, true, GIVEN);
    NetCut cut = line.cut();

    // Seven holes, six legs of 9 mm along and 24 mm across.
    double expected = (200 - 7 * HOLE + 6 * 81 / 96.0) * THICKNESS;
    assertThat(line.slants()).hasSize(6);
    assertThat(value(cut.netArea())).isCloseTo(expected, within(1e-9 * expected));
    LinkedSheet.agrees(JointRuns.before(cut.netArea()));
  }

  /** All lines tried one by one, for up to seven holes, leave nothing less. */
  @Property(tries = 150)
  void noLineLeavesLess(
      @ForAll @Size(min = 1, max = 7) List<@IntRange(min = -40, max = 40) Integer> along,
      @ForAll @Size(value = 7) List<@IntRange(min = -40, max = 40) Integer> across) {
    List<FacePlace> places = places(along, across);
    double least = 200;
    for (int chosen = 1; chosen < 1 << places.size(); chosen++) {
      least = Math.min(least, width(places, chosen));
    }
    assertThat(area(places) / THICKNESS).isCloseTo(least, within(1e-9));
  }

  /** One more hole never leaves more; moving all of them leaves the same. */
  @Property(tries = 150)
  void moreHolesAreNeverStronger(
      @ForAll @Size(min = 2, max = 8) List<@IntRange(min = -40, max = 40) Integer> along,
      @ForAll @Size(value = 8) List<@IntRange(min = -40, max = 40) Integer> across) {
    List<FacePlace> places = places(along, across);
    double all = area(places);

    assertThat(all).isLessThanOrEqualTo(area(places.subList(1, places.size())) + 1e-9);
    List<FacePlace> moved = new ArrayList<>();
    places.forEach(at -> moved.add(new FacePlace(at.a() + 7, at.b() - 3)));
    assertThat(area(moved)).isCloseTo(all, within(1e-9));
  }

  /** With less stagger a zigzag comes to the straight line, and never falls below it. */
  @Property(tries = 50)
  void theStraightLineIsTheLimit(@ForAll @IntRange(min = 0, max = 40) int stagger) {
    List<FacePlace> straight = List.of(new FacePlace(0, -20), new FacePlace(0, 20));
    List<FacePlace> zigzag = List.of(new FacePlace(0, -20), new FacePlace(stagger, 20));

    double added = area(zigzag) - area(straight);
    assertThat(added)
        .isCloseTo(Math.min(HOLE, stagger * stagger / 160.0) * THICKNESS, within(1e-9));
  }

  /** Width left by a line through the chosen holes in their order across; 200 if there is none. */
  private static double width(List<FacePlace> places, int chosen) {
    List<FacePlace> line = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      if ((chosen >> i & 1) == 1) {
        line.add(places.get(i));
      }
    }
    line.sort((one, other) -> Double.compare(one.b(), other.b()));
    double width = 200 - HOLE * line.size();
    for (int i = 1; i < line.size(); i++) {
      double along = Math.abs(line.get(i).a() - line.get(i - 1).a());
      double across = line.get(i).b() - line.get(i - 1).b();
      if (across == 0) {
        return 200;
      }
      width += Math.min(along * along / 4 / across, 0.65 * along);
    }
    return width;
  }

  private static List<FacePlace> places(List<Integer> along, List<Integer> across) {
    List<FacePlace> places = new ArrayList<>();
    for (int i = 0; i < along.size(); i++) {
      places.add(new FacePlace(along.get(i), across.get(i)));
    }
    return places;
  }

  private static double area(List<FacePlace> places) {
    return value(PlyNet.of("ply", ply(), places, true, GIVEN).cut().netArea());
  }

  private static double value(Feed feed) {
    Feed.Result result = (Feed.Result) feed;
    return result.from().value(result.symbol());
  }

  private static Ply ply() {
    return new Ply(
        "ply",
        THICKNESS,
        PlyStackProperties.alloy(),
        HOLE,
        new FacePlace(-100, -100),
        new FacePlace(100, 100),
        Optional.empty());
  }
}
