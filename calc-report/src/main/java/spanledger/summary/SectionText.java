package spanledger.summary;

import static java.math.RoundingMode.HALF_UP;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import spanledger.extrusion.ExtrusionReport;
import spanledger.extrusion.PropertyList;
import spanledger.section.SectionStudy;
import spanledger.section.feature.Feature;
import spanledger.section.outline.Point;
import spanledger.section.plate.Plate;
import spanledger.section.plate.PlateDoubt;
import spanledger.section.warping.FieldProperties;
import spanledger.section.warping.FieldReport;

/** The properties of an extrusion as text for a terminal. */
public final class SectionText {

  private static final String RULE = "-".repeat(88);

  private final ExtrusionReport report;
  private final StringBuilder text = new StringBuilder();

  private SectionText(ExtrusionReport report) {
    this.report = report;
  }

  /** All that is known, ending in a line break. */
  public static String of(ExtrusionReport report) {
    return new SectionText(report).write();
  }

  private String write() {
    SectionStudy study = report.study();
    line(report.name() + "  (" + report.origin() + ")");
    line("drawing: " + report.extrusion().source());
    if (study.parts().size() > 1) {
      line(
          study.parts().size()
              + " pieces that bend as one, as said by "
              + report.extrusion().actingTogether().orElse("nobody"));
    }
    line(RULE);
    line("Exact, from the outline (y to the right, z up, 1 the major principal axis):");
    PropertyList.exact(study.plane()).stream().filter(this::isNews).forEach(this::property);
    report
        .massPerMetre()
        .ifPresent(
            mass ->
                line(
                    String.format(
                        Locale.ROOT,
                        "  %-8s %14s %-4s  mass per metre of %s",
                        "m",
                        number(mass),
                        "kg/m",
                        report.alloy().orElseThrow().designation())));
    line(RULE);
    if (study.field().isPresent()) {
      elements(study.field().get(), study.plane().centroid());
    } else {
      line(
          "Torsion, warping and shear are NOT worked out: they depend on how the pieces are joined.");
    }
    line(RULE);
    plates(study);
    features(study.features());
    line(RULE);
    Cautions.LINES.forEach(this::line);
    return text.toString();
  }

  private void elements(FieldProperties field, Point centroid) {
    FieldReport found = field.report();
    line(
        String.format(
            Locale.ROOT,
            "By finite elements (%d triangles with 6 nodes, %d refinements, ν = %s for shear):",
            found.triangles(),
            found.refinements(),
            field.shear().poissonRatio()));
    PropertyList.byElements(field, centroid).forEach(this::property);
    line(
        "  ± is a bound for the shape as meshed; ~ is what the last refinement changed; target "
            + percent(found.target())
            + ".");
    if (!found.targetMet()) {
      line(
          "  !! The target was NOT REACHED: error "
              + percent(found.error())
              + ". Ask for a coarser one with --target, or simplify fine details.");
    }
    if (!found.sharpCorners().isEmpty()) {
      line(
          "  Sharp inner corners, where the elastic shear stress has no bound; W_t and tau_A leave them"
              + " out up to "
              + size(found.leftOut())
              + " mm:");
      line(
          "    "
              + found.sharpCorners().stream()
                  .map(Point::toString)
                  .collect(Collectors.joining(" ")));
    }
  }

  /** Where the principal axes are y and z, their moduli need not be said twice. */
  private boolean isNews(PropertyList.Property property) {
    double quarters = report.study().plane().majorAngle() / (Math.PI / 2);
    boolean same = Math.abs(quarters - Math.rint(quarters)) < 1e-9;
    return !same || !property.symbol().matches("(i|W_el|W_pl|v)_[12]");
  }

  private void property(PropertyList.Property property) {
    String error =
        property.error().map(e -> (e.isBound() ? "± " : "~ ") + percent(e.size())).orElse("");
    line(
        String.format(
                Locale.ROOT,
                "  %-8s %14s %-4s %-11s %s",
                property.symbol(),
                number(property.value()),
                property.unit(),
                error,
                property.words())
            .stripTrailing());
  }

  private void plates(SectionStudy study) {
    if (study.parts().size() > 1) {
      line("Plates for local buckling are NOT recognised in several pieces.");
      return;
    }
    line("Plates for local buckling (see the picture):");
    for (Plate plate : study.plates().plates()) {
      String edited = study.edits().words(plate);
      line(
          String.format(
              Locale.ROOT,
              "  %-8s %-30s b %8s  t %6s  b/t %6.1f  %s%s",
              plate.name(),
              plate.kind().words() + (plate.bulge() == 0 ? "" : ", curved"),
              size(plate.width()),
              size(plate.thickness()),
              plate.slenderness(),
              plate.certainty().words(),
              edited.isEmpty() ? "" : ", " + edited));
    }
    study.edits().removed().forEach(plate -> line("  " + plate.name() + ": removed by the user"));
    if (!report.extrusion().corrections().isEmpty()) {
      line("  corrected by " + report.extrusion().corrections().by());
    }
    if (study.plates().isSure() && !study.plates().plates().isEmpty()) {
      return;
    }
    line("");
    line("  !! UNSURE about the plates: local buckling is NOT CHECKED with this section until");
    line("  !! someone confirms or corrects them under \"plates\" in the outline file.");
    for (PlateDoubt doubt : study.plates().doubts()) {
      line("  !! at " + doubt.where() + ": " + doubt.because());
    }
  }

  private void features(List<Feature> features) {
    if (features.isEmpty()) {
      return;
    }
    line("Features for joints, mm:");
    for (Feature feature : features) {
      line(
          String.format(
              Locale.ROOT,
              "  %-20s %-12s %s",
              feature.name(),
              feature.kind(),
              feature.sizes().entrySet().stream()
                  .map(size -> size.getKey() + " " + size(size.getValue()))
                  .collect(Collectors.joining(", "))));
    }
  }

  /** Five significant digits or a few more, at most four decimals. */
  static String number(double value) {
    if (!Double.isFinite(value)) {
      return "none";
    }
    double size = Math.abs(value);
    if (size >= 1e9) {
      return String.format(Locale.ROOT, "%.4e", value);
    }
    int digits = size < 1 ? 0 : (int) Math.floor(Math.log10(size)) + 1;
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(Math.max(0, Math.min(4, 6 - digits)), HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }

  /** The same without trailing zeros. */
  private static String size(double value) {
    return new BigDecimal(number(value)).stripTrailingZeros().toPlainString();
  }

  private static String percent(double part) {
    return String.format(Locale.ROOT, "%.2g %%", 100 * part);
  }

  private void line(String words) {
    text.append(words).append('\n');
  }
}
