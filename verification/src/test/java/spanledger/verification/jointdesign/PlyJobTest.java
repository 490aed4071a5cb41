package spanledger.verification.jointdesign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spanledger.frame.Restraint;
import spanledger.job.JobReader;
import spanledger.job.ReadJob;
import spanledger.job.Tables;
import spanledger.jointdesign.FaceRun;
import spanledger.jointdesign.JointFinding;
import spanledger.resistance.joint.JointCheck;
import spanledger.verdict.Assessment;
import spanledger.verification.check.AssessedJob;

/**
 * Bolts through several plies of a described joint, from job file to checks, on the cantilever of
 * {@link JointJobTest}: four bolts M10 of A4-70, sheared in their threads.
 */
class PlyJobTest {

  /**
   * One plane of M10 through the thread: 0.5 of 700 MPa on 58.0 mm², γ_M2 = 1.25 (EN 1999-1-1,
   * Table 8.5, from memory; 0.5 for grades without a row of their own, docs/theory).
   */
  private static final double PLANE = 0.5 * 700 * 58.0 / 1.25;

  @TempDir Path folder;

  /** A fork of two like prongs: half of every force on a prong, all on the tab, two planes. */
  @Test
  void aForkHalvesShearOnProngsAndPlanes() {
    FaceRun face = face(fork(5, 8, 5));
    double greatest = greatestShear(face);

    assertThat(sum(face, "P_1", "front")).isCloseTo(sum(face, "P_1", "tab") / 2, within(1e-9));
    assertThat(sum(face, "P_2", "back")).isCloseTo(sum(face, "P_2", "tab") / 2, within(1e-9));
    assertThat(sum(face, "P_2", "tab"))
        .isCloseTo(face.demands().stream().mapToDouble(d -> d.value("B_z")).sum(), within(1e-9));
    assertThat(use(face, "bolt in shear")).isCloseTo(greatest / 2 / PLANE, within(1e-9));
    assertThat(net(face, "back")).isCloseTo(net(face, "tab") / 2, within(1e-9));
  }

  /**
   * A prong of 3 mm and one of 8 mm about a tab of 6 mm: the bolt as a beam on the middles of its
   * plies has 4.5 mm to the thin prong and 7 mm to the thick one, so the thin one bears 7/11.5 of
   * the force, and the thick one no less than half.
   */
  @Test
  void theNearerProngOfAForkBearsMore() {
    FaceRun face = face(fork(3, 6, 8));

    double tab = sum(face, "P_2", "tab");
    assertThat(sum(face, "P_2", "front")).isCloseTo(tab * 7 / 11.5, within(1e-9 * tab));
    assertThat(sum(face, "P_2", "back")).isCloseTo(tab / 2, within(1e-9 * tab));
    assertThat(use(face, "bolt in shear"))
        .isCloseTo(greatestShear(face) * 7 / 11.5 / PLANE, within(1e-9));
  }

  /** A leg on a wall is what it was without saying so: all on both, one plane. */
  @Test
  void twoPliesOfTwoPartsBearAll() {
    String two = "%s, %s".formatted(ply("front", 5, "member"), ply("tab", 8, "holder"));
    FaceRun known = face(plate(two));
    FaceRun unknown = face(plate(two.replaceAll(", \"belongsTo\": \"[a-z]*\"", "")));

    assertThat(uses(known)).isEqualTo(uses(unknown));
  }

  /**
   * The spring of a bolt in a fork, by the coefficients of EN 1993-1-8, Table 6.11 (from memory):
   * two planes of 8 d² f_ub/16, plies of 12 k_b k_t d f_u each with k_b = 0.25·30/10 + 0.5 = 1.25
   * at most 0.25·40/10 + 0.375 = 1.375 (ends at 30 mm, bolts at 40 mm) and k_t = 1.5 t/16. The face
   * is put at the member end, where a pull has no arm that would turn it.
   */
  @Test
  void aForkIsStifferThanOnePlane() throws IOException {
    double plane = 8 * 100 * 700 / 16.0;
    double perThickness = 12 * 1.25 * 1.5 / 16 * 10 * 215;
    double expected = 1 / (1 / (2 * plane) + 1 / (perThickness * 10) + 1 / (perThickness * 8));

    String atEnd = fork(5, 8, 5).replace("\"60 mm\", \"25 mm\"", "\"0 mm\", \"0 mm\"");

    assertThat(spring(atEnd)).isCloseTo(expected, within(1e-9 * expected));
  }

  private double spring(String face) throws IOException {
    String text =
        JointJobTest.text(face, "start", "")
            .replace("\"start\": \"rigid\"", "\"start\": {\"fromJoint\": \"joint\"}");
    Path file = folder.resolve("stiff.json");
    Files.writeString(file, text);
    ReadJob read = new JobReader(Tables.shipped()).read(file);
    assertThat(read.problems()).isEmpty();
    var end = ((ReadJob.Accepted) read).upper().orElseThrow().frame().members().get(0).start();
    return ((Restraint.Spring) end.holds().get(0)).stiffness() / 4;
  }

  private static String fork(double front, double tab, double back) {
    return plate(
        "%s, %s, %s"
            .formatted(
                ply("front", front, "member"),
                ply("tab", tab, "holder"),
                ply("back", back, "member")));
  }

  private static String ply(String name, double thickness, String part) {
    return """
        {"name": "%s", "thickness": "%s mm", "material": "own", "hole": "11 mm",
         "from": ["-50 mm", "-50 mm"], "to": ["50 mm", "50 mm"], "belongsTo": "%s"}"""
        .formatted(name, thickness, part);
  }

  private static String plate(String plies) {
    return """
        {"name": "side", "normal": "-v", "origin": ["60 mm", "25 mm", "0 mm"],
         "bolts": {"size": "M10", "grade": "A4-70", "head": "hexagon",
           "places": [["-20 mm", "-20 mm"], ["20 mm", "-20 mm"], ["20 mm", "20 mm"], ["-20 mm", "20 mm"]]},
         "plies": [%s]}
        """
        .formatted(plies);
  }

  private FaceRun face(String face) {
    Assessment found = AssessedJob.of(folder, JointJobTest.text(face, "start", ""));
    return found.joints().orElseThrow().findings().stream()
        .filter(f -> f.use().words().equals("bolt in shear"))
        .map(JointFinding::face)
        .findFirst()
        .orElseThrow();
  }

  private static double greatestShear(FaceRun face) {
    return face.demands().stream().mapToDouble(d -> d.value("F_v")).max().orElseThrow();
  }

  /** What all bolts put on a ply, as its bearing checks are given it. */
  private static double sum(FaceRun face, String symbol, String ply) {
    String along = symbol.equals("P_1") ? "along u" : "along w";
    return face.checks().stream()
        .filter(c -> c.uses().get(0).words().equals("bolt on plate"))
        .filter(c -> c.working().label().contains(" in " + ply + " " + along))
        .mapToDouble(c -> c.working().value("F_b"))
        .sum();
  }

  /** What the net section of a ply is given along w. */
  private static double net(FaceRun face, String ply) {
    return face.checks().stream()
        .filter(c -> c.uses().get(0).words().equals("plate in tension, whole section"))
        .filter(c -> c.working().label().endsWith(ply + " along w"))
        .mapToDouble(c -> c.working().value("N"))
        .sum();
  }

  private static double use(FaceRun face, String words) {
    return face.checks().stream()
        .flatMap(
            c ->
                c.uses().stream()
                    .filter(u -> u.words().equals(words))
                    .map(u -> c.working().value(u.symbol())))
        .mapToDouble(v -> v)
        .max()
        .orElseThrow();
  }

  private static List<Double> uses(FaceRun face) {
    return face.checks().stream().map(JointCheck::utilisation).toList();
  }
}
