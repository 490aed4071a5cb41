package spanledger.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.MemberEnd;
import spanledger.frame.MemberRole;
import spanledger.frame.Node;
import spanledger.frame.Restraint;
import spanledger.frame.Vector;
import spanledger.provenance.Source;
import spanledger.section.PropertyRow;
import spanledger.section.Section;

/** The mass matrix of a segment against published entries. */
class SegmentMassTest {

  private static final double MASS = 420;
  private static final double LENGTH = 2_000;
  private static final double SOFT = 1e-10 * Bars.E * Bars.A / LENGTH;

  /** Published shapes are those of bars without shear deformation. */
  private static final Section RIGID_IN_SHEAR =
      new Section(
          "rigid in shear",
          new PropertyRow(
              Bars.A,
              1e15,
              1e15,
              Bars.IY,
              Bars.IZ,
              Bars.IT,
              32_000,
              23_000,
              25_000,
              OptionalDouble.empty(),
              OptionalDouble.empty(),
              OptionalDouble.empty(),
              OptionalDouble.empty(),
              3,
              3,
              Optional.empty(),
              Source.derived("Round figures for tests")));

  private static SegmentModel along(MemberEnd start, MemberEnd end, Vector to) {
    Node a = Bars.node("A", 0, 0, 0);
    Node b = new Node("B", to);
    Member member =
        new Member(
            "AB", MemberRole.OTHER, List.of(a, b), RIGID_IN_SHEAR, Bars.ALLOY, 0, start, end);
    return new SegmentModel(new Frame(List.of(a, b), List.of(member), List.of()).segments().get(0));
  }

  private static double[] matrix(MemberEnd start, MemberEnd end) {
    double[] matrix = new double[144];
    new SegmentMass(along(start, end, new Vector(LENGTH, 0, 0)), MASS).matrix(matrix);
    return matrix;
  }

  private static void entry(double[] matrix, int row, int column, double expected) {
    assertThat(matrix[12 * row + column])
        .as("%d, %d", row, column)
        .isCloseTo(expected, within(1e-10 * (Math.abs(expected) + MASS)));
  }

  /**
   * Source: J. S. Przemieniecki, Theory of Matrix Structural Analysis (1968), 11.4, without
   * rotatory inertia (from memory): m/420 times 156, 22 L, 54, -13 L, 4 L², -3 L². Tolerance:
   * rounding.
   */
  @Test
  void aRigidlyJoinedBarHasTheConsistentMassOfTheHandbook() {
    double[] m = matrix(MemberEnd.RIGID, MemberEnd.RIGID);
    entry(m, 0, 0, MASS / 3);
    entry(m, 0, 6, MASS / 6);
    // Along Y with turns about Z, then along Z, which positive turns about Y lower.
    int[][] planes = {{1, 5, 7, 11, 1}, {2, 4, 8, 10, -1}};
    for (int[] p : planes) {
      entry(m, p[0], p[0], 156);
      entry(m, p[0], p[1], p[4] * 22 * LENGTH);
      entry(m, p[0], p[2], 54);
      entry(m, p[0], p[3], p[4] * -13 * LENGTH);
      entry(m, p[1], p[1], 4 * LENGTH * LENGTH);
      entry(m, p[1], p[3], -3 * LENGTH * LENGTH);
      entry(m, p[2], p[3], p[4] * -22 * LENGTH);
    }
    double polar = 2.7e-6 * (Bars.IY + Bars.IZ) * LENGTH;
    entry(m, 3, 3, polar / 3);
    entry(m, 3, 9, polar / 6);
  }

  /**
   * Source: S. P. Timoshenko, Vibration Problems in Engineering, art. 4 (from memory): 33/140 of a
   * cantilever's mass goes with its tip, 17/35 of a simple beam's with its middle, which is the
   * clamped end of half of it. Tolerance: shear areas of 1e15 mm² leave 1e-9.
   */
  @Test
  void aPinnedEndTakesTheMassOfACantilever() {
    MemberEnd pin = new MemberEnd(Restraint.FIXED, Restraint.FREE, Restraint.FREE, Vector.ZERO);
    double[] m = matrix(MemberEnd.RIGID, pin);
    for (int[] p : new int[][] {{1, 7, 11}, {2, 8, 10}}) {
      assertThat(m[13 * p[1]]).isCloseTo(MASS * 33 / 140, within(1e-6));
      assertThat(m[13 * p[0]]).isCloseTo(MASS * 17 / 35, within(1e-6));
      assertThat(m[13 * p[2]]).isCloseTo(0, within(1e-6));
    }
  }

  /**
   * By statics: what is free to slide or turn at one end goes with the other. Tolerance: a joint
   * must hold along the axis, here by 1e-10 of the bar's own stiffness.
   */
  @Test
  void aBarThatIsFreeAtOneEndGoesWithTheOther() {
    MemberEnd loose =
        new MemberEnd(Restraint.FREE, Restraint.FIXED, Restraint.FIXED, Vector.ZERO)
            .withAxial(new Restraint.Spring(SOFT));
    double[] m = matrix(MemberEnd.RIGID, loose);
    double polar = 2.7e-6 * (Bars.IY + Bars.IZ) * LENGTH;
    assertThat(m[0]).isCloseTo(MASS, within(1e-6));
    assertThat(m[13 * 6]).isCloseTo(0, within(1e-6));
    entry(m, 3, 3, polar);
    entry(m, 9, 9, 0);
  }

  /** By statics, for a bar askew on arms: moved as a whole by 1 mm it has its mass. */
  @Test
  void movedAsAWholeItHasItsMass() {
    MemberEnd start =
        new MemberEnd(
            Restraint.FIXED, Restraint.FIXED, new Restraint.Spring(3e8), new Vector(10, -40, 90));
    SegmentModel model = along(start, MemberEnd.RIGID, new Vector(900, 700, -400));
    double[] m = new double[144];
    new SegmentMass(model, MASS).matrix(m);
    for (int axis = 0; axis < 3; axis++) {
      double sum = 0;
      for (int i = axis; i < 12; i += 6) {
        for (int j = axis; j < 12; j += 6) {
          sum += m[12 * i + j];
        }
      }
      assertThat(sum).isCloseTo(MASS, within(1e-9));
    }
  }
}
