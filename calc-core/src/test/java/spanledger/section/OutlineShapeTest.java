package spanledger.section;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import spanledger.section.outline.Outline;
import spanledger.section.outline.Ring;
import spanledger.section.outline.Similarity;
import spanledger.section.warping.FieldSolver;

/**
 * An outline gives the same properties as the shape of the same sizes, where that shape is exact.
 */
class OutlineShapeTest {

  private static final Outline BOX =
      Outline.of(
          Ring.polygon(0, 0, 50, 0, 50, 100, 0, 100), Ring.polygon(3, 4, 47, 4, 47, 96, 3, 96));

  @Test
  void boxAsOutlineAndAsShape() {
    SectionProperties drawn = SectionProperties.of(OutlineShape.of(BOX, FieldSolver.standard()));
    SectionProperties sized = SectionProperties.of(new RectangularHollow(100, 50, 3, 4));
    exact(drawn.area(), sized.area());
    exact(drawn.secondMomentY(), sized.secondMomentY());
    exact(drawn.secondMomentZ(), sized.secondMomentZ());
    exact(drawn.elasticModulusY(), sized.elasticModulusY());
    exact(drawn.elasticModulusZ(), sized.elasticModulusZ());
    exact(drawn.plasticModulusY(), sized.plasticModulusY());
    exact(drawn.plasticModulusZ(), sized.plasticModulusZ());
    exact(drawn.webSlenderness(), sized.webSlenderness());
    exact(drawn.innerFlangeSlenderness(), sized.innerFlangeSlenderness());
    assertThat(drawn.principalRotation()).isCloseTo(0, Offset.offset(1e-12));
    assertThat(drawn.platesKnown()).isTrue();
    // Thin-wall formulas there, finite elements here: walls of 3 and 4 in 50 x 100.
    near(drawn.torsionConstant(), sized.torsionConstant(), 4);
    near(drawn.shearAreaY(), sized.shearAreaY(), 6);
    near(drawn.shearAreaZ(), sized.shearAreaZ(), 6);
  }

  @Test
  void channelAsOutlineAndAsShape() {
    Outline outline =
        Outline.of(Ring.polygon(0, 0, 50, 0, 50, 6, 4, 6, 4, 94, 50, 94, 50, 100, 0, 100));
    OutlineShape shape = OutlineShape.of(outline, FieldSolver.standard());
    SectionProperties drawn = SectionProperties.of(shape);
    SectionProperties sized = SectionProperties.of(new Channel(100, 50, 6, 4));
    exact(drawn.secondMomentZ(), sized.secondMomentZ());
    exact(drawn.elasticModulusZ(), sized.elasticModulusZ());
    exact(drawn.plasticModulusZ(), sized.plasticModulusZ());
    exact(drawn.webSlenderness(), sized.webSlenderness());
    exact(drawn.outstandSlenderness(), sized.outstandSlenderness());
    near(drawn.torsionConstant(), sized.torsionConstant(), 5);
    near(drawn.shearAreaZ(), sized.shearAreaZ(), 6);
    assertThat(shape.thinnestWall()).isCloseTo(4, Offset.offset(1e-9));
    assertThat(shape.thickestWall()).isCloseTo(6, Offset.offset(1e-9));
  }

  @Test
  void aTurnedOutlineHasThePropertiesOfItsPrincipalAxes() {
    double angle = 0.5;
    SectionProperties upright = SectionProperties.of(OutlineShape.of(BOX, FieldSolver.standard()));
    SectionProperties turned =
        SectionProperties.of(
            OutlineShape.of(BOX.moved(Similarity.rotation(angle)), FieldSolver.standard()));
    assertThat(turned.principalRotation()).isCloseTo(angle, Offset.offset(1e-9));
    exact(turned.secondMomentY(), upright.secondMomentY());
    exact(turned.plasticModulusZ(), upright.plasticModulusZ());
    near(turned.shearAreaY(), upright.shearAreaY(), 0.2);
    near(turned.shearAreaZ(), upright.shearAreaZ(), 0.2);
    near(turned.peakShearAreaZ(), upright.peakShearAreaZ(), 1);
    near(turned.torsionModulus(), upright.torsionModulus(), 1);
  }

  @Test
  void aFlatOutlineKeepsItsAxes() {
    SectionProperties flat =
        SectionProperties.of(
            OutlineShape.of(
                Outline.of(Ring.polygon(0, 0, 60, 0, 60, 12, 0, 12)), FieldSolver.standard()));
    exact(flat.secondMomentY(), 60 * Math.pow(12, 3) / 12);
    exact(flat.secondMomentZ(), 12 * Math.pow(60, 3) / 12);
    assertThat(flat.principalRotation()).isCloseTo(0, Offset.offset(1e-12));
  }

  private static void exact(double actual, double expected) {
    assertThat(actual).isCloseTo(expected, Percentage.withPercentage(1e-9));
  }

  private static void near(double actual, double expected, double percent) {
    assertThat(actual).isCloseTo(expected, Percentage.withPercentage(percent));
  }
}
