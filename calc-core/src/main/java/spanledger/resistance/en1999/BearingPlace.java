package spanledger.resistance.en1999;

import java.util.Optional;
import spanledger.provenance.Source;
import spanledger.section.Channel;
import spanledger.section.ISection;
import spanledger.section.RectangularHollow;
import spanledger.section.Shape;

/**
 * Where a concentrated load or a reaction stands on a member, in the plane of its webs.
 *
 * @param name for example {@code stringer S2, reaction at bearer B1}
 * @param kind how the load goes on
 * @param length that the load stands on, along the member, mm
 * @param fromEnd from the end of the member to that length, mm
 * @param panel distance of stiffeners, or the span if there are none, mm
 * @param webs that share the load
 * @param depth of the webs between the flanges, mm
 * @param webThickness mm
 * @param flangeThickness mm
 * @param flangeWidth of flange that belongs to one web, mm
 * @param flangeSides to how many sides of its web the flange reaches
 * @param source where this comes from
 */
public record BearingPlace(
    String name,
    Kind kind,
    double length,
    double fromEnd,
    double panel,
    int webs,
    double depth,
    double webThickness,
    double flangeThickness,
    double flangeWidth,
    int flangeSides,
    Source source) {

  /** How the load goes on. */
  public enum Kind {
    /** Into shear of the web, away from ends. */
    INSIDE(1),
    /** Straight through the web to the other flange. */
    THROUGH(2),
    /** Into shear of the web, at an end without a stiffener. */
    AT_END(3);

    private final int number;

    Kind(int number) {
      this.number = number;
    }

    int number() {
      return number;
    }
  }

  /**
   * A place on a shape with webs along z.
   *
   * @return nothing for other shapes; give the sizes of web and flange yourself
   */
  public static Optional<BearingPlace> on(
      Shape shape,
      String name,
      Kind kind,
      double length,
      double fromEnd,
      double panel,
      Source source) {
    return Webs.of(shape)
        .map(
            w ->
                new BearingPlace(
                    name,
                    kind,
                    length,
                    fromEnd,
                    panel,
                    w.number(),
                    w.depth() - 2 * w.flangeThickness(),
                    w.thickness(),
                    w.flangeThickness(),
                    w.width() / w.number(),
                    w.sides(),
                    source));
  }

  /** Webs along z of a shape: depth and width are those of the whole shape, mm. */
  private record Webs(
      int number, double depth, double thickness, double flangeThickness, double width, int sides) {

    static Optional<Webs> of(Shape shape) {
      if (shape instanceof ISection s) {
        return Optional.of(
            new Webs(1, s.depth(), s.webThickness(), s.flangeThickness(), s.width(), 2));
      }
      if (shape instanceof Channel s) {
        return Optional.of(
            new Webs(1, s.depth(), s.webThickness(), s.flangeThickness(), s.width(), 1));
      }
      if (shape instanceof RectangularHollow s) {
        return Optional.of(
            new Webs(2, s.depth(), s.webThickness(), s.flangeThickness(), s.width(), 1));
      }
      return Optional.empty();
    }
  }
}
