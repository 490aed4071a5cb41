package spanledger.section;

import java.util.Optional;
import spanledger.section.outline.InvalidOutlineException;
import spanledger.section.outline.Outline;
import spanledger.section.outline.Point;
import spanledger.section.outline.Ring;
import spanledger.section.outline.RoundedPolygon;

/** Outlines of shapes with sizes, corners rounded as published. */
public final class StandardOutlines {

  private static final Point CENTRE = new Point(0, 0);

  private StandardOutlines() {}

  /**
   * The outline of a shape with sizes, corners sharp; none of a row of properties. An outline is
   * its own.
   */
  public static Optional<Outline> of(Shape shape) {
    if (shape instanceof Channel channel) {
      return Optional.of(channel(channel, 0));
    } else if (shape instanceof ISection beam) {
      return Optional.of(iSection(beam, 0));
    } else if (shape instanceof Angle angle) {
      return Optional.of(angle(angle, 0));
    } else if (shape instanceof RectangularHollow tube) {
      return Optional.of(rectangularHollow(tube, 0, 0));
    } else if (shape instanceof RoundHollow tube) {
      double outer = tube.diameter() / 2;
      return Optional.of(
          Outline.of(Ring.circle(CENTRE, outer), Ring.circle(CENTRE, outer - tube.thickness())));
    } else if (shape instanceof SolidRectangle bar) {
      return Optional.of(Outline.of(rectangle(bar.width() / 2, bar.depth() / 2, 0)));
    } else if (shape instanceof SolidRound bar) {
      return Optional.of(Outline.of(Ring.circle(CENTRE, bar.diameter() / 2)));
    }
    return shape instanceof OutlineShape drawn ? Optional.of(drawn.outline()) : Optional.empty();
  }

  /**
   * A channel, the back of its web at y = 0.
   *
   * @param fillet radius between web and flanges, mm
   * @throws InvalidOutlineException if the radius does not fit
   */
  public static Outline channel(Channel shape, double fillet) {
    double d = shape.depth();
    double b = shape.width();
    double tf = shape.flangeThickness();
    double tw = shape.webThickness();
    return Outline.of(
        new RoundedPolygon()
            .corner(0, 0)
            .corner(b, 0)
            .corner(b, tf)
            .corner(tw, tf, fillet)
            .corner(tw, d - tf, fillet)
            .corner(b, d - tf)
            .corner(b, d)
            .corner(0, d)
            .close());
  }

  /**
   * An I-section, the middle of its web at y = 0.
   *
   * @param fillet radius between web and flanges, mm
   * @throws InvalidOutlineException if the radius does not fit
   */
  public static Outline iSection(ISection shape, double fillet) {
    double d = shape.depth();
    double b = shape.width() / 2;
    double tf = shape.flangeThickness();
    double tw = shape.webThickness() / 2;
    return Outline.of(
        new RoundedPolygon()
            .corner(-b, 0)
            .corner(b, 0)
            .corner(b, tf)
            .corner(tw, tf, fillet)
            .corner(tw, d - tf, fillet)
            .corner(b, d - tf)
            .corner(b, d)
            .corner(-b, d)
            .corner(-b, d - tf)
            .corner(-tw, d - tf, fillet)
            .corner(-tw, tf, fillet)
            .corner(-b, tf)
            .close());
  }

  /**
   * An angle, its corner at the origin.
   *
   * @param fillet radius between its legs, mm
   * @throws InvalidOutlineException if the radius does not fit
   */
  public static Outline angle(Angle shape, double fillet) {
    double d = shape.depth();
    double b = shape.width();
    double t = shape.thickness();
    return Outline.of(
        new RoundedPolygon()
            .corner(0, 0)
            .corner(b, 0)
            .corner(b, t)
            .corner(t, t, fillet)
            .corner(t, d)
            .corner(0, d)
            .close());
  }

  /**
   * A rectangular tube, its middle at the origin.
   *
   * @param outerRadius of its outer corners, mm
   * @param innerRadius of its inner corners, mm
   * @throws InvalidOutlineException if a radius does not fit
   */
  public static Outline rectangularHollow(
      RectangularHollow shape, double outerRadius, double innerRadius) {
    double d = shape.depth() / 2;
    double b = shape.width() / 2;
    return Outline.of(
        rectangle(b, d, outerRadius),
        rectangle(b - shape.webThickness(), d - shape.flangeThickness(), innerRadius));
  }

  private static Ring rectangle(double b, double d, double radius) {
    return new RoundedPolygon()
        .corner(-b, -d, radius)
        .corner(b, -d, radius)
        .corner(b, d, radius)
        .corner(-b, d, radius)
        .close();
  }
}
