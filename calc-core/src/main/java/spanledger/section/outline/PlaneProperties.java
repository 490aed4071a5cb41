package spanledger.section.outline;

import java.util.List;
import spanledger.procedure.CompiledProcedure;

/**
 * The properties of an outline that follow from its boundary exactly, arcs included.
 *
 * @param area A, mm²
 * @param perimeter length of all rings, mm
 * @param outerPerimeter length of the outer ring, mm
 * @param centroid mm
 * @param momentY I_y = ∫z² dA about the centroid, mm⁴
 * @param momentZ I_z = ∫y² dA about the centroid, mm⁴
 * @param productYZ I_yz = ∫yz dA about the centroid, mm⁴
 * @param majorAngle α_1: angle of the major principal axis to the left of y, rad
 * @param y bending about the axis parallel to y
 * @param z bending about the axis parallel to z; its left is the side of smaller y
 * @param major bending about the major principal axis
 * @param minor bending about the minor principal axis
 * @param cubicMoments moments of third order about the centroid
 */
public record PlaneProperties(
    double area,
    double perimeter,
    double outerPerimeter,
    Point centroid,
    double momentY,
    double momentZ,
    double productYZ,
    double majorAngle,
    BendingModuli y,
    BendingModuli z,
    BendingModuli major,
    BendingModuli minor,
    CubicMoments cubicMoments) {

  private static final CompiledProcedure AXES = SectionAxes.PROCEDURE.compile();
  private static final CompiledProcedure MODULUS = ElasticModulus.PROCEDURE.compile();

  /** The properties of an outline. */
  public static PlaneProperties of(Outline outline) {
    return of(List.of(outline));
  }

  /**
   * The properties of parts that bend as one section, as if joined without slip. Whether they do is
   * the caller's to say.
   *
   * @param parts at least one; they may touch but not overlap
   */
  public static PlaneProperties ofPartsActingTogether(List<Outline> parts) {
    return of(parts);
  }

  private static PlaneProperties of(List<Outline> parts) {
    List<Edge> edges = parts.stream().flatMap(part -> part.edges().stream()).toList();
    Point near = middle(edges);
    AreaIntegrals sums = BoundaryIntegrals.about(near, edges);
    double[] axes =
        AXES.run(
            sums.area(),
            sums.firstY(),
            sums.firstZ(),
            sums.squareY(),
            sums.squareZ(),
            sums.productYZ());
    Point centroid = near.plus(new Point(value(axes, "y_c"), value(axes, "z_c")));
    double angle = value(axes, "α_1");
    Bending bending = new Bending(edges, sums.area(), centroid);
    return new PlaneProperties(
        sums.area(),
        sums.length(),
        parts.stream().mapToDouble(part -> part.outer().length()).sum(),
        centroid,
        value(axes, "I_y"),
        value(axes, "I_z"),
        value(axes, "I_yz"),
        angle,
        bending.about(0, value(axes, "I_y")),
        bending.about(Math.PI / 2, value(axes, "I_z")),
        bending.about(angle, value(axes, "I_1")),
        bending.about(angle + Math.PI / 2, value(axes, "I_2")),
        CubicMoments.about(centroid, edges));
  }

  /**
   * The second moment about an axis through the centroid.
   *
   * @param angle the direction of the axis, to the left of y, rad
   */
  public double momentAbout(double angle) {
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    return momentY * cos * cos + momentZ * sin * sin - 2 * productYZ * sin * cos;
  }

  /**
   * The moduli about an axis through the centroid.
   *
   * @param outline the outline that these are the properties of
   * @param angle the direction of the axis, to the left of y, rad
   */
  public BendingModuli bendingAbout(Outline outline, double angle) {
    return new Bending(outline.edges(), area, centroid).about(angle, momentAbout(angle));
  }

  private static double value(double[] axes, String symbol) {
    return axes[AXES.slot(symbol)];
  }

  /** The middle of the box around an outline: an origin near it for {@link BoundaryIntegrals}. */
  public static Point origin(Outline outline) {
    return middle(outline.edges());
  }

  private static Point middle(List<Edge> edges) {
    Extent y = Extent.of(edges, new Point(1, 0));
    Extent z = Extent.of(edges, new Point(0, 1));
    return new Point((y.least() + y.greatest()) / 2, (z.least() + z.greatest()) / 2);
  }

  private record Bending(List<Edge> edges, double area, Point centroid) {

    BendingModuli about(double angle, double moment) {
      Fibres fibres = Fibres.of(edges, centroid, angle);
      double positive = fibres.positive();
      double negative = fibres.negative();
      double[] moduli = MODULUS.run(moment, positive, negative);
      PlasticAxis plastic = PlasticAxis.of(edges, area, centroid, angle);
      return new BendingModuli(
          moment,
          positive,
          negative,
          moduli[MODULUS.slot("W_+")],
          moduli[MODULUS.slot("W_-")],
          moduli[MODULUS.slot("W_el")],
          plastic.modulus(),
          plastic.offset());
    }
  }
}
