package spanledger.verification.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static spanledger.verification.joint.Parts.GIVEN;
import static spanledger.verification.joint.Parts.force;

import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spanledger.joint.stiffness.WallBending;
import spanledger.procedure.CompiledProcedure;
import spanledger.resistance.joint.JointCode;
import spanledger.resistance.joint.WallBetweenWebs;
import spanledger.resistance.member.Working;

/**
 * A wall between webs against the elastic plate and against limit analysis. The plate is a long
 * strip of width 1 and stiffness 1 under a unit force. It is solved wave by wave along the strip:
 * for the wave number α the deflection across it obeys (d²/dx² - α²)² w = 0 on both sides of the
 * force, with the shear leaping by 1 there.
 */
class WallBoundsTest {

  private static final JointCode CODE = Parts.codes().get(0);

  /**
   * With hinges at the web and in the field the strip bears F where F x(1 - x)/l = 2 m. The elastic
   * plate reaches m at the web where F times its greatest moment there is m: no more length of wall
   * may be used than makes the two alike, and at least nine tenths of it are.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.06, 0.1, 0.2, 0.3, 0.4, 0.5})
  void theLengthOfWallIsNoMoreThanTheElasticPlateGives(double place) {
    double elastic = place * (1 - place) / 2 / plate(place, true)[0];

    assertThat(length(place)).isBetween(0.9 * elastic, elastic);
  }

  /**
   * The middle of a clamped strip and of a supported one: S. Timoshenko, S. Woinowsky-Krieger,
   * Theory of Plates and Shells, tables of rectangular plates under a force at the middle, side
   * ratio infinite; from memory, confirm. Their last digit is that of series cut off early.
   */
  @Test
  void thePlateOfThisTestIsThatOfTheHandbook() {
    assertThat(plate(0.5, true)[0]).isCloseTo(0.168, within(0.001));
    assertThat(plate(0.5, true)[1]).isCloseTo(0.00725, within(0.00002));
    assertThat(plate(0.5, false)[1]).isCloseTo(0.01695, within(0.00003));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.05, 0.15, 0.25, 0.4, 0.5})
  void theSpringOfAWallIsThatOfThePlate(double place) {
    CompiledProcedure wall = WallBending.PROCEDURE.compile();
    double rigidity = 70_000 * 27 / 10.92;
    for (boolean clamped : new boolean[] {true, false}) {
      double expected = rigidity / (plate(place, clamped)[1] * 54 * 54);
      double found =
          Working.of(wall, "wall")
              .given("E", 70_000, "E", GIVEN)
              .given("t", 3, "t", GIVEN)
              .given("w", 54, "w", GIVEN)
              .given("x", place * 54, "x", GIVEN)
              .given("clamped", clamped ? 1 : 0, "clamped", GIVEN)
              .run()
              .value("k_w");
      // The table has three digits where deflections are small.
      assertThat(found).isCloseTo(expected, within(4e-3 * expected));
    }
  }

  /**
   * A single force in the middle: from above a fan of hinges, 4 π m, by work; from below 4/3 π m,
   * where a third of the wall's strength bears a strip and the rest spreads the force on a disc as
   * wide as the wall; with edges that are only supported, π m (docs/theory/joint-resistance.md).
   */
  @Test
  void aSingleForceStandsBetweenTheBoundsOfLimitAnalysis() {
    double hinge = 3 * 3 / 4.0 * strip(0.5, 1e4, true).value("f_od");

    assertThat(resistance(strip(0.5, 1e4, true)) / hinge).isBetween(4 * Math.PI / 3, 4 * Math.PI);
    assertThat(resistance(strip(0.5, 1e4, false)) / hinge).isLessThan(Math.PI);
  }

  /**
   * Rows close to each other bend the wall as a cylinder: with a row every 10 mm in the middle of
   * 54 mm the force on a row is 8 m 10/54. The whole of n rows stays below the mechanism of a rigid
   * patch of EN 1993-1-8, Table 7.11 (from memory, confirm): 4 m (2 h/w + 4).
   */
  @Test
  void closeRowsBendTheWallAsACylinder() {
    double hinge = 3 * 3 / 4.0 * strip(0.5, 5, true).value("f_od");
    double row = resistance(strip(0.5, 5, true));
    double last = resistance(strip(0.5, 5, 1e4, true));

    assertThat(row).isCloseTo(8 * hinge * 10 / 54, within(1e-9 * row));
    for (int rows = 2; rows < 20; rows++) {
      double patch = 4 * hinge * (2 * (rows - 1) * 10 / 54.0 + 4);
      assertThat((rows - 2) * row + 2 * last).isLessThan(patch);
    }
  }

  /** The force at which the check of a unit force uses all. */
  private static double resistance(Working strip) {
    return strip.value("S_Rd") / strip.value("S");
  }

  /** Length of wall that the check takes for a force far from others, per width. */
  private static double length(double place) {
    return place * (1 - place) / strip(place, 1e4, true).value("S");
  }

  private static Working strip(double place, double half, boolean clamped) {
    return strip(place, half, half, clamped);
  }

  /** A unit force on a wall 54 mm wide and 3 mm thick. */
  private static Working strip(double place, double first, double second, boolean clamped) {
    WallBetweenWebs.Load load =
        new WallBetweenWebs.Load("bolt", force(1), 1, place * 54, first, second);
    return CODE.wall(
            new WallBetweenWebs(
                "wall", Parts.metal(160, 195), 54, 3, clamped, List.of(load), GIVEN))
        .working();
  }

  /** The greatest moment at the nearer edge and the deflection at the force. */
  private static double[] plate(double place, boolean clamped) {
    double[] sums = new double[2];
    double step = 0.1;
    // Simpson's rule; shorter waves add less than 1e-3 of either number.
    int steps = (int) (Math.min(260, Math.max(120, 22 / place)) / step) / 2 * 2;
    for (int i = 0; i <= steps; i++) {
      double[] wave = wave(Math.max(i * step, 1e-2), place, clamped);
      double weight = i == 0 || i == steps ? 1 : i % 2 == 1 ? 4 : 2;
      for (int k = 0; k < 2; k++) {
        sums[k] += weight * step / 3 * wave[k] / Math.PI;
      }
    }
    return sums;
  }

  /** Edge moment and deflection at the force for one wave number. */
  private static double[] wave(double alpha, double place, boolean clamped) {
    double[][] a = new double[8][8];
    double[][] left = shapes(alpha, 0);
    double[][] right = shapes(alpha, 1);
    double[][] at = shapes(alpha, place);
    for (int i = 0; i < 4; i++) {
      a[0][i] = left[0][i];
      a[1][i] = left[clamped ? 1 : 2][i];
      a[2][4 + i] = right[0][i];
      a[3][4 + i] = right[clamped ? 1 : 2][i];
      for (int order = 0; order < 4; order++) {
        a[4 + order][i] = -at[order][i];
        a[4 + order][4 + i] = at[order][i];
      }
    }
    RealVector leap = new ArrayRealVector(8);
    leap.setEntry(7, 1);
    RealVector c = new LUDecomposition(new Array2DRowRealMatrix(a), 1e-300).getSolver().solve(leap);
    double moment = 0;
    double deflection = 0;
    for (int i = 0; i < 4; i++) {
      moment += left[2][i] * c.getEntry(i);
      deflection += at[0][i] * c.getEntry(i);
    }
    return new double[] {moment, deflection};
  }

  /** Four solutions that decay from one edge each, with their first three derivatives. */
  private static double[][] shapes(double a, double x) {
    double l = Math.exp(-a * x);
    double y = 1 - x;
    double r = Math.exp(-a * y);
    return new double[][] {
      {l, x * l, r, y * r},
      {-a * l, (1 - a * x) * l, a * r, (a * y - 1) * r},
      {a * a * l, (a * a * x - 2 * a) * l, a * a * r, (a * a * y - 2 * a) * r},
      {
        -a * a * a * l,
        (3 * a * a - a * a * a * x) * l,
        a * a * a * r,
        (a * a * a * y - 3 * a * a) * r
      }
    };
  }
}
