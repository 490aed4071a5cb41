package spanledger.verification.section;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Percentage;
import spanledger.section.outline.Outline;
import spanledger.section.outline.Point;
import spanledger.section.outline.RoundedPolygon;
import spanledger.section.outline.Similarity;
import spanledger.section.warping.FieldProperties;
import spanledger.section.warping.FieldSolver;

/**
 * Turning, shifting, mirroring and scaling an outline changes finite-element values only as
 * geometry says. The mesh is another each time, so values agree to the error target, not to the
 * last digit.
 */
class SectionMoveProperties {

  private static final FieldSolver SOLVER = FieldSolver.standard().withTarget(5e-4);

  @Property(tries = 12)
  void torsionWarpingAndShearCentreMoveWithTheOutline(
      @ForAll @DoubleRange(min = -3, max = 3) double angle,
      @ForAll @DoubleRange(min = -300, max = 300) double shift,
      @ForAll @DoubleRange(min = 0.05, max = 20) double scale,
      @ForAll boolean mirrored) {
    Outline start = channelWithBox();
    Similarity move = new Similarity(mirrored, angle, scale, new Point(shift, -shift / 2));
    FieldProperties a = SOLVER.solve(start);
    FieldProperties b = SOLVER.solve(start.moved(move));
    near(b.torsion().torsionConstant(), a.torsion().torsionConstant() * Math.pow(scale, 4), 0.05);
    near(b.torsion().warpingConstant(), a.torsion().warpingConstant() * Math.pow(scale, 6), 0.1);
    Point centre = move.apply(a.torsion().shearCentre());
    // 0.1 % of the depth of 80.
    assertThat(b.torsion().shearCentre().distance(centre)).isLessThan(0.08 * scale);
    // Shear areas belong to axes; what does not turn is the sum of the energies along both.
    double before = 1 / a.shear().areaY() + 1 / a.shear().areaZ();
    double after = 1 / b.shear().areaY() + 1 / b.shear().areaZ();
    near(after * scale * scale, before, 0.2);
  }

  /** One closed cell, one open flange, fillets: every kind of warping in one section. */
  private static Outline channelWithBox() {
    return Outline.of(
        new RoundedPolygon()
            .corner(0, 0, 3)
            .corner(50, 0, 1)
            .corner(50, 4, 1)
            .corner(30, 4, 2)
            .corner(30, 80, 3)
            .corner(0, 80, 3)
            .close(),
        new RoundedPolygon()
            .corner(3, 4, 2)
            .corner(27, 4, 2)
            .corner(27, 77, 2)
            .corner(3, 77, 2)
            .close());
  }

  private static void near(double actual, double expected, double percent) {
    assertThat(actual).isCloseTo(expected, Percentage.withPercentage(percent));
  }
}
