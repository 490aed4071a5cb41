package spanledger.verification.section;

import java.util.ArrayList;
import java.util.List;
import spanledger.section.outline.ArcEdge;
import spanledger.section.outline.Edge;
import spanledger.section.outline.Outline;
import spanledger.section.outline.PlaneProperties;
import spanledger.section.outline.Point;
import spanledger.section.outline.Ring;
import spanledger.section.outline.StraightEdge;
import spanledger.section.warping.FieldProperties;
import spanledger.section.warping.FieldSolver;

/**
 * One expected value beside what the program finds.
 *
 * @param expected what is known
 * @param found what the program finds
 */
public record SectionComparison(SectionCase.Expected expected, double found) {

  /** Solves the outline of a case and compares all of its values. */
  public static List<SectionComparison> of(SectionCase each) {
    Outline outline = outline(each.given());
    PlaneProperties plane = PlaneProperties.of(outline);
    FieldProperties field =
        FieldSolver.standard()
            .withPoissonRatio(each.given().poissonRatio())
            .withTarget(each.given().target())
            .solve(outline);
    return each.expected().stream()
        .map(e -> new SectionComparison(e, SectionQuantity.of(e.quantity(), plane, field)))
        .toList();
  }

  /** The difference, relative unless the tolerance is absolute. */
  public double difference() {
    double difference = found - expected.value();
    return expected.absolute() ? difference : difference / expected.value();
  }

  /** Whether the difference stays within the tolerance; never for a number that is none. */
  public boolean agrees() {
    return Math.abs(difference()) <= expected.tolerance();
  }

  private static Outline outline(SectionCase.Given given) {
    List<Ring> rings = given.rings().stream().map(SectionComparison::ring).toList();
    return new Outline(rings.get(0), rings.subList(1, rings.size()));
  }

  private static Ring ring(List<double[]> corners) {
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      double[] corner = corners.get(i);
      double[] next = corners.get((i + 1) % corners.size());
      Point start = new Point(corner[0], corner[1]);
      Point end = new Point(next[0], next[1]);
      edges.add(
          corner.length > 2 ? new ArcEdge(start, end, corner[2]) : new StraightEdge(start, end));
    }
    return new Ring(edges);
  }
}
