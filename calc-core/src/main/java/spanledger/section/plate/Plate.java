package spanledger.section.plate;

import spanledger.section.outline.ArcEdge;
import spanledger.section.outline.Edge;
import spanledger.section.outline.Point;
import spanledger.section.outline.Ray;
import spanledger.section.outline.Similarity;
import spanledger.section.outline.StraightEdge;

/**
 * A plate of a section, described by its midline.
 *
 * @param name unique in its section; recognised plates are P1, P2, ...
 * @param kind how its edges are held
 * @param start one end of the flat midline, at the fillet if there is one, mm
 * @param end the other end, the free one of an outstand, mm
 * @param bulge tangent of a quarter of the turn of the midline to the left; 0 if flat
 * @param width clear of fillets and of the walls that it joins, along the midline, mm; outer
 *     diameter of a round tube
 * @param thickness mm; of a tapered plate its mean
 * @param certainty whether someone has to look
 */
public record Plate(
    String name,
    PlateKind kind,
    Point start,
    Point end,
    double bulge,
    double width,
    double thickness,
    Certainty certainty) {

  public Plate {
    if (!(width > 0) || !(thickness > 0)) {
      throw new IllegalArgumentException(
          "Plate "
              + name
              + " needs a width and a thickness above zero, found "
              + width
              + " mm and "
              + thickness
              + " mm.");
    }
  }

  /** Width per thickness. */
  public double slenderness() {
    return width / thickness;
  }

  /** Whether the plate lies along z rather than along y. */
  public boolean isUpright() {
    return Math.abs(end.z() - start.z()) > Math.abs(end.y() - start.y());
  }

  /** The middle of its midline. */
  public Point midpoint() {
    return start.equals(end) ? start : midline().at(0.5);
  }

  /** How far a point is from its midline, mm. */
  double distance(Point point) {
    if (start.equals(end)) {
      return Math.max(0, point.distance(start) - width);
    }
    double t = Math.max(0, Math.min(1, Ray.abreast(midline(), point)));
    return point.distance(midline().at(t));
  }

  private Edge midline() {
    return bulge == 0 ? new StraightEdge(start, end) : new ArcEdge(start, end, bulge);
  }

  /** The plate after a move that keeps lengths. */
  Plate moved(Similarity similarity) {
    return new Plate(
        name,
        kind,
        similarity.apply(start),
        similarity.apply(end),
        similarity.mirrored() ? -bulge : bulge,
        width * similarity.scale(),
        thickness * similarity.scale(),
        certainty);
  }

  Plate with(PlateKind newKind, Certainty newCertainty) {
    return new Plate(name, newKind, start, end, bulge, width, thickness, newCertainty);
  }

  Plate named(String newName) {
    return new Plate(newName, kind, start, end, bulge, width, thickness, certainty);
  }
}
