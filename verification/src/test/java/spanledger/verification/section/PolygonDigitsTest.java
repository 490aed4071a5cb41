package spanledger.verification.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import spanledger.section.outline.Outline;
import spanledger.section.outline.PlaneProperties;
import spanledger.section.outline.Point;
import spanledger.section.outline.Ring;

/**
 * Area and second moments of polygons to the figure to reach: 1e-12 of the value. Expected: the
 * same integrals in decimal arithmetic of 60 digits from the very coordinates, about the origin and
 * then about the centroid, so that nothing is lost; polygons have 200 edges and lie up to ten times
 * their size away from the origin.
 */
class PolygonDigitsTest {

  private static final MathContext DIGITS = new MathContext(60);
  private static final double FIGURE = 1e-12;

  @Test
  void areaAndSecondMomentsHaveTwelveDigits() {
    Random random = new Random(20261125);
    for (int i = 0; i < 200; i++) {
      List<Point> corners = star(random, 200);
      PlaneProperties found = PlaneProperties.of(Outline.of(Ring.polygon(corners)));
      double[] expected = exact(corners);
      assertThat(found.area()).isCloseTo(expected[0], within(FIGURE * expected[0]));
      assertThat(found.momentY()).isCloseTo(expected[1], within(FIGURE * expected[1]));
      assertThat(found.momentZ()).isCloseTo(expected[2], within(FIGURE * expected[2]));
    }
  }

  /** Corners around a centre, so that no edge crosses another. */
  private static List<Point> star(Random random, int corners) {
    double y = 1000 * (2 * random.nextDouble() - 1);
    double z = 1000 * (2 * random.nextDouble() - 1);
    List<Point> star = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double angle = 2 * Math.PI * (i + 0.8 * random.nextDouble()) / corners;
      double radius = 40 + 20 * random.nextDouble();
      star.add(new Point(y + radius * Math.cos(angle), z + radius * Math.sin(angle)));
    }
    return star;
  }

  /** A, I_y, I_z about the centroid. */
  private static double[] exact(List<Point> corners) {
    BigDecimal[] sum = new BigDecimal[5];
    Arrays.fill(sum, BigDecimal.ZERO);
    for (int i = 0; i < corners.size(); i++) {
      BigDecimal y1 = new BigDecimal(corners.get(i).y());
      BigDecimal z1 = new BigDecimal(corners.get(i).z());
      BigDecimal y2 = new BigDecimal(corners.get((i + 1) % corners.size()).y());
      BigDecimal z2 = new BigDecimal(corners.get((i + 1) % corners.size()).z());
      BigDecimal cross = y1.multiply(z2).subtract(y2.multiply(z1));
      sum[0] = sum[0].add(cross);
      sum[1] = sum[1].add(cross.multiply(y1.add(y2)));
      sum[2] = sum[2].add(cross.multiply(z1.add(z2)));
      sum[3] = sum[3].add(cross.multiply(squares(y1, y2)));
      sum[4] = sum[4].add(cross.multiply(squares(z1, z2)));
    }
    BigDecimal area = sum[0].divide(BigDecimal.valueOf(2), DIGITS);
    BigDecimal sy = sum[1].divide(BigDecimal.valueOf(6), DIGITS);
    BigDecimal sz = sum[2].divide(BigDecimal.valueOf(6), DIGITS);
    BigDecimal squareY = sum[3].divide(BigDecimal.valueOf(12), DIGITS);
    BigDecimal squareZ = sum[4].divide(BigDecimal.valueOf(12), DIGITS);
    return new double[] {
      area.doubleValue(),
      squareZ.subtract(sz.multiply(sz).divide(area, DIGITS)).doubleValue(),
      squareY.subtract(sy.multiply(sy).divide(area, DIGITS)).doubleValue()
    };
  }

  private static BigDecimal squares(BigDecimal one, BigDecimal other) {
    return one.multiply(one).add(one.multiply(other)).add(other.multiply(other));
  }
}
