package spanledger.section.warping;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import spanledger.section.outline.Outline;
import spanledger.section.outline.Point;
import spanledger.section.outline.Ring;

/**
 * What the solver promises of itself; comparisons with published values are in the verification
 * module.
 */
class FieldSolverTest {

  private static final Outline RECTANGLE = Outline.of(Ring.polygon(0, 0, 20, 0, 20, 10, 0, 10));

  /** 0.22868 h b³ for h/b = 2: series solution of Saint-Venant. */
  private static final double RECTANGLE_TORSION = 0.228682 * 20 * 1000;

  @Test
  void boundsEncloseTheSolution() {
    FieldProperties coarse = new FieldSolver(0.3, 0.05, 60_000).solve(RECTANGLE);
    assertThat(coarse.torsion().lowerBound()).isLessThan(RECTANGLE_TORSION);
    assertThat(coarse.torsion().upperBound()).isGreaterThan(RECTANGLE_TORSION);
    assertThat(coarse.report().torsionError()).isLessThan(0.05);
  }

  @Test
  void aStricterTargetIsMetWithMoreTriangles() {
    FieldProperties coarse = FieldSolver.standard().withTarget(0.01).solve(RECTANGLE);
    FieldProperties fine = FieldSolver.standard().withTarget(1e-5).solve(RECTANGLE);
    assertThat(fine.report().triangles()).isGreaterThan(coarse.report().triangles());
    assertThat(fine.report().targetMet()).isTrue();
    assertThat(fine.torsion().torsionConstant())
        .isCloseTo(RECTANGLE_TORSION, Percentage.withPercentage(1e-3));
  }

  @Test
  void aTargetOutOfReachIsSaidSo() {
    FieldProperties stopped = new FieldSolver(0.3, 1e-9, 500).solve(RECTANGLE);
    assertThat(stopped.report().targetMet()).isFalse();
    assertThat(stopped.report().label()).contains("NOT reached");
  }

  @Test
  void theShearCentreOfASymmetricSectionIsItsCentroid() {
    FieldProperties found = FieldSolver.standard().solve(RECTANGLE);
    assertThat(found.torsion().shearCentre().distance(new Point(10, 5))).isLessThan(0.01);
    assertThat(found.asymmetry().zJ()).isCloseTo(0, Offset.offset(0.01));
    // No Poisson's ratio: 5/6 of the area in both directions.
    FieldProperties plain = FieldSolver.standard().withPoissonRatio(0).solve(RECTANGLE);
    assertThat(plain.shear().areaY()).isCloseTo(200 * 5 / 6.0, Percentage.withPercentage(0.01));
    assertThat(plain.shear().areaZ()).isCloseTo(200 * 5 / 6.0, Percentage.withPercentage(0.01));
    // 1.5 V/A at mid-depth.
    assertThat(plain.shear().peakZ().stress()).isCloseTo(1.5 / 200, Percentage.withPercentage(1));
  }

  @Test
  void sharpReentrantCornersAreReported() {
    FieldProperties angle =
        FieldSolver.standard()
            .withTarget(0.01)
            .solve(Outline.of(Ring.polygon(0, 0, 50, 0, 50, 5, 5, 5, 5, 50, 0, 50)));
    assertThat(angle.report().sharpCorners()).containsExactly(new Point(5, 5));
    assertThat(angle.torsion().peak().place().distance(new Point(5, 5)))
        .isGreaterThanOrEqualTo(angle.report().leftOut());
  }

  @Test
  void theSameOutlineGivesTheSameNumbers() {
    double first = FieldSolver.standard().solve(RECTANGLE).torsion().torsionConstant();
    assertThat(FieldSolver.standard().solve(RECTANGLE).torsion().torsionConstant())
        .isEqualTo(first);
  }
}
