package spanledger.picture.section;

import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import spanledger.picture.Drawing;
import spanledger.picture.Ink;
import spanledger.picture.Lettering;
import spanledger.picture.Pen;
import spanledger.picture.Spot;
import spanledger.picture.Trace;
import spanledger.picture.page.Box;
import spanledger.picture.page.Legend;
import spanledger.section.outline.Outline;
import spanledger.section.outline.Point;
import spanledger.section.warping.FieldProperties;
import spanledger.section.warping.PeakStress;
import spanledger.section.warping.StressAtNodes;

/**
 * A field of the finite-element solution as bands that get lighter as the value grows, so that they
 * are told apart in grey, too.
 */
public final class FieldPicture {

  private static final int BANDS = 10;
  private static final int WARPING_FINENESS = 2;
  private static final int STRESS_FINENESS = 6;
  private static final Pen EDGE = Pen.full(Ink.BLACK, 1.4);
  private static final Pen POSITIVE = Pen.full(Ink.BLACK, 0.7);
  private static final Pen NEGATIVE = Pen.dashed(Ink.WHITE, 0.9, 4.0, 2.5);
  private static final Pen ZERO = Pen.full(Ink.BLACK, 1.8);

  /** From dark to light; every step is lighter in grey, too. */
  private static final List<Ink> RAMP =
      List.of(
          new Ink(0x1B2A49),
          new Ink(0x1F5A7A),
          new Ink(0x4A9A8C),
          new Ink(0xB9CF7A),
          new Ink(0xFBF3C4));

  /**
   * What is drawn.
   *
   * @param title of the picture
   * @param purpose what the field is
   * @param unit of its values
   * @param values at places
   * @param signed whether values below zero mean the other direction
   */
  private record Subject(
      String title,
      String purpose,
      String unit,
      ToDoubleFunction<FieldSamples.At> values,
      boolean signed) {}

  private final Outline outline;
  private final FieldProperties field;
  private final Subject subject;
  private final Sheet sheet;
  private final View view;

  private FieldPicture(
      Outline outline, FieldProperties field, Subject subject, Lettering lettering) {
    this.outline = outline;
    this.field = field;
    this.subject = subject;
    sheet = new Sheet(lettering, subject.title(), subject.purpose());
    view = View.of(List.of(outline), List.of(field.torsion().shearCentre()), Sheet.room(20));
  }

  /** The warping function about the shear centre. */
  public static Drawing warping(
      Outline outline, FieldProperties field, String name, Lettering lettering) {
    Subject subject =
        new Subject(
            name,
            "Warping function ω about the shear centre: axial movement per twist, x at the viewer",
            "mm²",
            at -> at.of(field::warping),
            true);
    FieldPicture picture = new FieldPicture(outline, field, subject, lettering);
    picture.fill();
    Spot shear = picture.view.spot(field.torsion().shearCentre());
    Symbols.shearCentre(picture.sheet.paper, shear);
    picture.sheet.labels.keepFree(Box.around(shear, 14, 14));
    picture.sheet.labels.near(shear, "S", 13, Ink.BLACK, true);
    picture.sheet.legend.sample(Symbols::shearCentre, "S shear centre");
    return picture.finish("Warping of " + name, "Bands of the warping function over the section.");
  }

  /** Shear stress of torsion, per its largest. */
  public static Drawing torsion(
      Outline outline, FieldProperties field, String name, Lettering lettering) {
    return stress(
        outline,
        field,
        field.torsion().peak(),
        new Subject(
            name,
            "Shear stress of Saint-Venant torsion, as a part of its largest: W_t = "
                + Shown.digits(field.torsion().torsionModulus())
                + " mm³",
            "of τ_max",
            at -> size(field.torsionStress(), at) / field.torsion().peak().stress(),
            false),
        "Torsion",
        lettering);
  }

  /** Shear stress of a force along z, per its largest. */
  public static Drawing shearAlongZ(
      Outline outline, FieldProperties field, String name, Lettering lettering) {
    return shear(outline, field, field.shearStressZ(), field.shear().peakZ(), "z", name, lettering);
  }

  /** Shear stress of a force along y, per its largest. */
  public static Drawing shearAlongY(
      Outline outline, FieldProperties field, String name, Lettering lettering) {
    return shear(outline, field, field.shearStressY(), field.shear().peakY(), "y", name, lettering);
  }

  private static Drawing shear(
      Outline outline,
      FieldProperties field,
      StressAtNodes stress,
      PeakStress peak,
      String axis,
      String name,
      Lettering lettering) {
    Subject subject =
        new Subject(
            name,
            "Shear stress of a force along "
                + axis
                + " through the shear centre, as a part of its largest: V/τ_max = "
                + Shown.digits(1 / peak.stress())
                + " mm²",
            "of τ_max",
            at -> size(stress, at) / peak.stress(),
            false);
    return stress(outline, field, peak, subject, "Shear along " + axis, lettering);
  }

  private static double size(StressAtNodes stress, FieldSamples.At at) {
    return Math.hypot(at.of(stress::y), at.of(stress::z));
  }

  private static Drawing stress(
      Outline outline,
      FieldProperties field,
      PeakStress peak,
      Subject subject,
      String what,
      Lettering lettering) {
    FieldPicture picture = new FieldPicture(outline, field, subject, lettering);
    picture.fill();
    for (Point corner : field.report().sharpCorners()) {
      Symbols.doubt(picture.sheet.paper, picture.view.spot(corner));
    }
    Spot worst = picture.view.spot(peak.place());
    Symbols.peak(picture.sheet.paper, worst);
    picture.sheet.labels.keepFree(Box.around(worst, 14, 14));
    picture.sheet.labels.near(worst, "max", 12, Ink.BLACK, true);
    Legend legend = picture.sheet.legend;
    legend.sample(
        Symbols::peak,
        "largest stress, y "
            + Shown.length(peak.place().y())
            + ", z "
            + Shown.length(peak.place().z()));
    if (!field.report().sharpCorners().isEmpty()) {
      legend.sample(
          Symbols::doubt,
          "sharp inner corner: elastic stress has no bound there; left out up to "
              + Shown.length(field.report().leftOut())
              + " mm");
    }
    return picture.finish(
        what + " stress of " + subject.title(), "Bands of the shear stress over the section.");
  }

  /** Fills the section band by band, from the lowest up, and writes the legend. */
  private void fill() {
    FieldSamples samples =
        new FieldSamples(field.mesh(), subject.signed() ? WARPING_FINENESS : STRESS_FINENESS);
    Contours contours = new Contours(samples, samples.values(subject.values()), view);
    double low = subject.signed() ? contours.least() : 0;
    double high = subject.signed() ? contours.greatest() : 1;
    double step = roundStep((high - low) / BANDS);
    int first = (int) Math.floor(low / step + 1e-9);
    int last = Math.max(first + 1, (int) Math.ceil(high / step - 1e-9));
    sheet.paper.area(view.trace(outline), ink(0, last - first));
    Drawing.Paper lines = new Drawing.Paper();
    for (int band = first + 1; band < last; band++) {
      Contours.Region region = contours.above(band * step);
      if (!region.rim().moves().isEmpty()) {
        sheet.paper.area(region.rim(), ink(band - first, last - first));
      }
      if (subject.signed() && !region.line().moves().isEmpty()) {
        lines.line(region.line(), band == 0 ? ZERO : band < 0 ? NEGATIVE : POSITIVE);
      }
    }
    // Stress changes too fast across thin walls for lines to be told apart.
    lines.finish(0, 0, "", "").marks().forEach(sheet.paper::mark);
    sheet.paper.line(view.trace(outline), EDGE);
    outline.edges().forEach(edge -> sheet.labels.avoid(view.spots(edge)));
    Legend legend = sheet.legend;
    legend.heading(subject.signed() ? "ω in " + subject.unit() : "Shear stress, " + subject.unit());
    for (int band = last - 1; band >= first; band--) {
      Ink ink = ink(band - first, last - first);
      legend.sample((on, at) -> swatch(on, at, ink), range(band * step, (band + 1) * step));
    }
    legend.gap();
    if (subject.signed()) {
      legend.line(ZERO, "zero");
      legend.sample(
          (on, at) -> {
            swatch(on, at, RAMP.get(0));
            on.line(Trace.through(at.plus(-15, 0), at.plus(15, 0)), NEGATIVE);
          },
          "below zero");
      legend.words(
          "least "
              + Shown.digits(contours.least())
              + ", greatest "
              + Shown.digits(contours.greatest())
              + " "
              + subject.unit(),
          Ink.BLACK);
    }
  }

  private Drawing finish(String title, String description) {
    sheet.legend.gap();
    sheet.legend.words(
        String.format(
            Locale.ROOT,
            "%d triangles with 6 nodes; error of I_t at most %.2g %%",
            field.report().triangles(),
            100 * field.report().error()),
        Ink.QUIET);
    double low = view.box().bottom() + 50;
    sheet.scaleBar(view, low);
    sheet.axes(low);
    return sheet.finish(low + 10, title, description);
  }

  private static void swatch(Drawing.Paper on, Spot at, Ink ink) {
    on.area(
        Trace.around(at.plus(-15, -6), at.plus(15, -6), at.plus(15, 6), at.plus(-15, 6)),
        ink,
        Pen.full(Ink.QUIET, 0.6));
  }

  private static String range(double from, double to) {
    return Shown.digits(from) + " to " + Shown.digits(to);
  }

  private static Ink ink(int band, int bands) {
    double at = bands <= 1 ? 0.5 : (double) band / (bands - 1) * (RAMP.size() - 1);
    int below = (int) Math.min(RAMP.size() - 2, Math.floor(at));
    return RAMP.get(below).towards(RAMP.get(below + 1), at - below);
  }

  /** The next step of 1, 2 or 5 times a power of ten. */
  private static double roundStep(double wanted) {
    double unit = Math.pow(10, Math.floor(Math.log10(wanted)));
    for (double factor : new double[] {1, 2, 5}) {
      if (factor * unit >= wanted * (1 - 1e-9)) {
        return factor * unit;
      }
    }
    return 10 * unit;
  }
}
