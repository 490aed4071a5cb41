package spanledger.picture.section;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import spanledger.picture.Drawing;
import spanledger.picture.Ink;
import spanledger.picture.Lettering;
import spanledger.picture.Mark;
import spanledger.picture.Pen;
import spanledger.picture.Spot;
import spanledger.picture.Trace;
import spanledger.picture.page.Box;
import spanledger.picture.page.Legend;
import spanledger.section.SectionStudy;
import spanledger.section.outline.ArcEdge;
import spanledger.section.outline.BendingModuli;
import spanledger.section.outline.Edge;
import spanledger.section.outline.Extent;
import spanledger.section.outline.PlaneProperties;
import spanledger.section.outline.Point;
import spanledger.section.plate.Plate;

/** The dimensioned outline with centroid, shear centre, principal and plastic neutral axes. */
public final class OutlinePicture {

  private static final Pen EDGE = Pen.full(Ink.BLACK, 1.4);
  private static final Pen PRINCIPAL = Pen.dashed(Ink.BLACK, 0.9, 14.0, 3.0, 2.0, 3.0);
  private static final Pen PLASTIC = Pen.dashed(Ink.BLACK, 1.3, 5.0, 4.0);
  private static final double AXIS_OVERRUN = 26;

  /** Axes nearer to each other than this are drawn as one. */
  private static final double ONE_LINE = 2;

  private static final int MOST_THICKNESSES = 5;

  private final SectionStudy study;
  private final PlaneProperties plane;
  private final Sheet sheet;
  private final View view;

  private OutlinePicture(SectionStudy study, String name, Lettering lettering) {
    this.study = study;
    plane = study.plane();
    sheet =
        new Sheet(
            lettering,
            name,
            "Outline, axes and centres; dimensions in mm, seen against the x axis");
    List<Point> points = new ArrayList<>(List.of(plane.centroid()));
    study.field().ifPresent(field -> points.add(field.torsion().shearCentre()));
    view = View.of(study.parts(), points, Sheet.room(70));
  }

  /**
   * Draws a section.
   *
   * @param name what the section is called
   */
  public static Drawing of(SectionStudy study, String name, Lettering lettering) {
    return new OutlinePicture(study, name, lettering).draw(name);
  }

  private Drawing draw(String name) {
    study.parts().forEach(part -> sheet.paper.area(view.trace(part), Ink.PALE, EDGE));
    study.parts().stream()
        .flatMap(part -> part.edges().stream())
        .forEach(edge -> sheet.labels.avoid(view.spots(edge)));
    List<Edge> edges = study.parts().stream().flatMap(part -> part.edges().stream()).toList();
    Extent y = Extent.of(edges, new Point(1, 0));
    Extent z = Extent.of(edges, new Point(0, 1));
    Dimensions dimensions = new Dimensions(sheet.paper, sheet.labels, sheet.lettering);
    double low = belowAll() + 60;
    dimensions.below(view.box(), low, Shown.length(y.greatest() - y.least()));
    dimensions.beside(view.box(), leftOfAll() - 60, Shown.length(z.greatest() - z.least()));
    axes();
    points();
    thicknesses(dimensions);
    legend(edges);
    sheet.scaleBar(view, low + 40);
    sheet.axes(low + 40);
    return sheet.finish(
        low + 50,
        "Outline of " + name,
        "Cross-section with overall dimensions, wall thicknesses, centroid C, shear centre S,"
            + " principal axes 1 and 2 and plastic neutral axes.");
  }

  /** Where dimensions may stand without meeting the shear centre. */
  private double leftOfAll() {
    return study
        .field()
        .map(field -> view.spot(field.torsion().shearCentre()).x() + 30)
        .filter(x -> x < view.box().left())
        .orElse(view.box().left());
  }

  private double belowAll() {
    return study
        .field()
        .map(field -> view.spot(field.torsion().shearCentre()).y() - 30)
        .filter(y -> y > view.box().bottom())
        .orElse(view.box().bottom());
  }

  private void axes() {
    axis(0, plane.majorAngle(), PRINCIPAL, "1", true);
    axis(0, plane.majorAngle() + Math.PI / 2, PRINCIPAL, "2", true);
    plastic(plane.major(), plane.majorAngle(), "n1");
    plastic(plane.minor(), plane.majorAngle() + Math.PI / 2, "n2");
  }

  private void plastic(BendingModuli moduli, double angle, String label) {
    if (Math.abs(moduli.plasticAxis()) * view.scale() > ONE_LINE) {
      axis(moduli.plasticAxis(), angle, PLASTIC, label, false);
    }
  }

  /**
   * Draws a line through the section.
   *
   * @param offset from the centroid, to the left of the line, mm
   * @param atEnd whether its label is at its right or upper end, not at the other
   */
  private void axis(double offset, double angle, Pen pen, String label, boolean atEnd) {
    Point along = Point.direction(angle);
    if (along.y() < -1e-9 || (Math.abs(along.y()) < 1e-9 && along.z() < 0)) {
      along = along.times(-1);
      offset = -offset;
    }
    Point through = plane.centroid().plus(along.quarterTurn().times(offset));
    Spot anchor = view.spot(through);
    double[] ends = view.box().grown(AXIS_OVERRUN).cut(anchor, along.y(), -along.z());
    Spot from = anchor.plus(ends[0] * along.y(), -ends[0] * along.z());
    Spot to = anchor.plus(ends[1] * along.y(), -ends[1] * along.z());
    sheet.paper.line(Trace.through(from, to), pen);
    sheet.labels.avoid(from, to);
    double length = from.distance(to);
    double dx = (to.x() - from.x()) / length;
    double dy = (to.y() - from.y()) / length;
    Spot at = atEnd ? to.plus(11 * dx, 11 * dy) : from.plus(-12 * dx, -12 * dy);
    sheet.labels.fixed(at.plus(0, 4), label, Dimensions.SIZE, Mark.Anchor.MIDDLE, Ink.BLACK);
  }

  private void points() {
    Spot centroid = view.spot(plane.centroid());
    Symbols.centroid(sheet.paper, centroid);
    sheet.labels.keepFree(Box.around(centroid, 14, 14));
    if (study.field().isEmpty()) {
      sheet.labels.near(centroid, "C", Dimensions.SIZE + 1, Ink.BLACK, false);
      return;
    }
    Spot shear = view.spot(study.field().get().torsion().shearCentre());
    Symbols.shearCentre(sheet.paper, shear);
    sheet.labels.keepFree(Box.around(shear, 14, 14));
    if (centroid.distance(shear) < 3) {
      sheet.labels.near(centroid, "C, S", Dimensions.SIZE + 1, Ink.BLACK, false);
    } else {
      sheet.labels.near(centroid, "C", Dimensions.SIZE + 1, Ink.BLACK, false);
      sheet.labels.near(shear, "S", Dimensions.SIZE + 1, Ink.BLACK, false);
    }
  }

  /** Each thickness once, at the longest plate that has it. */
  private void thicknesses(Dimensions dimensions) {
    Map<String, Plate> longest = new LinkedHashMap<>();
    for (Plate plate : study.plates().plates()) {
      longest.merge(
          Shown.length(plate.thickness()), plate, (a, b) -> b.width() > a.width() ? b : a);
    }
    longest.entrySet().stream()
        .limit(MOST_THICKNESSES)
        .forEach(entry -> thickness(dimensions, entry.getValue(), entry.getKey()));
  }

  private void thickness(Dimensions dimensions, Plate plate, String words) {
    Midline midline = Midline.of(plate, study.parts());
    // Off the middle, where axes are likely to pass.
    Point at = midline.at(0.36);
    Point across = midline.left(0.36).times(plate.thickness() / 2);
    boolean outwards = across.dot(at.minus(plane.centroid())) >= 0;
    Point from = at.minus(outwards ? across : across.times(-1));
    Point to = at.plus(outwards ? across : across.times(-1));
    dimensions.across(view.spot(from), view.spot(to), "t " + words);
  }

  private void legend(List<Edge> edges) {
    Legend legend = sheet.legend;
    legend.heading("Signs");
    legend.sample(Symbols::centroid, "C centroid, y " + at(plane.centroid()));
    study
        .field()
        .ifPresent(
            field ->
                legend.sample(
                    Symbols::shearCentre,
                    "S shear centre, y " + at(field.torsion().shearCentre())));
    legend.line(PRINCIPAL, "principal axes: 1 (major), 2");
    legend.line(PLASTIC, plasticWords());
    legend.heading("Properties");
    legend.value("α_1", Shown.degrees(plane.majorAngle()) + " from y to axis 1");
    legend.value("A", Shown.digits(plane.area()) + " mm²");
    legend.value("I_y, I_z", both(plane.momentY(), plane.momentZ(), "mm⁴"));
    legend.value(
        "I_1, I_2", both(plane.major().secondMoment(), plane.minor().secondMoment(), "mm⁴"));
    legend.value(
        "W_el1, W_el2",
        both(plane.major().elasticModulus(), plane.minor().elasticModulus(), "mm³"));
    legend.value(
        "W_pl1, W_pl2",
        both(plane.major().plasticModulus(), plane.minor().plasticModulus(), "mm³"));
    study
        .field()
        .ifPresent(
            field -> {
              legend.value("I_t", Shown.digits(field.torsion().torsionConstant()) + " mm⁴");
              legend.value("I_w", Shown.digits(field.torsion().warpingConstant()) + " mm⁶");
            });
    legend.gap();
    TreeSet<Double> radii =
        edges.stream()
            .filter(ArcEdge.class::isInstance)
            .map(edge -> Math.rint(((ArcEdge) edge).radius() * 100) / 100)
            .collect(Collectors.toCollection(TreeSet::new));
    if (!radii.isEmpty()) {
      legend.words(
          "Radii: " + radii.stream().map(Shown::length).collect(Collectors.joining(", ")) + " mm",
          Ink.BLACK);
    }
    legend.words("Errors, meshes and sources: see the workbook.", Ink.QUIET);
  }

  private String plasticWords() {
    boolean one = Math.abs(plane.major().plasticAxis()) * view.scale() > ONE_LINE;
    boolean two = Math.abs(plane.minor().plasticAxis()) * view.scale() > ONE_LINE;
    if (one && two) {
      return "plastic neutral axes n1 and n2, parallel to 1 and 2";
    }
    if (!one && !two) {
      return "plastic neutral axes: on the principal axes";
    }
    String drawn = one ? "1" : "2";
    return "plastic neutral axis n" + drawn + "; the other is on axis " + (one ? "2" : "1");
  }

  private static String at(Point point) {
    return Shown.length(point.y()) + ", z " + Shown.length(point.z());
  }

  private static String both(double one, double two, String unit) {
    return Shown.digits(one) + ", " + Shown.digits(two) + " " + unit;
  }
}
