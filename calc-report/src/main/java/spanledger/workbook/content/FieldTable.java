package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.section.outline.Point;
import spanledger.section.warping.FieldProperties;
import spanledger.section.warping.FieldReport;
import spanledger.section.warping.ShearProperties;
import spanledger.section.warping.TorsionProperties;
import spanledger.workbook.layout.Entry;
import spanledger.workbook.layout.EntryCells;
import spanledger.workbook.layout.EntryList;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.NumberAt;

/** What finite elements found, each value with mesh and error beside it. */
final class FieldTable {

  private static final Dimension PER_AREA = Dimension.whole(-2, 0, 0, 0);

  private final FieldReport report;
  private final EntryCells values;

  private FieldTable(LedgerSheet sheet, FieldProperties field, Point centroid, double angle) {
    report = field.report();
    if (!report.targetMet()) {
      sheet.note("The target of the finite elements was NOT REACHED: see the errors below.");
    }
    values = sheet.add(new EntryList("Values by finite elements", entries(field, centroid, angle)));
    sheet.add(new EntryList("Mesh and errors", mesh()));
    report
        .sharpCorners()
        .forEach(
            corner ->
                sheet.note(
                    "Sharp inner corner at "
                        + corner
                        + ": elastic theory gives no bound on the shear stress there; it is left out"
                        + " of the largest stresses."));
  }

  /**
   * Writes the tables.
   *
   * @param centroid of the outline
   * @param angle of the principal y axis from y, for the peak stresses
   */
  static FieldTable write(LedgerSheet sheet, FieldProperties field, Point centroid, double angle) {
    return new FieldTable(sheet, field, centroid, angle);
  }

  private List<Entry> entries(FieldProperties field, Point centroid, double angle) {
    TorsionProperties torsion = field.torsion();
    ShearProperties shear = field.shear();
    Point shearCentre = torsion.shearCentre().minus(centroid);
    Point elastic = shear.elasticShearCentre().minus(centroid);
    String warping = changing("I_w", report.warpingChange());
    String areas =
        changing("the shear areas", report.shearChange()) + "; ν = " + shear.poissonRatio();
    String peaks =
        "finite elements: largest stress moved by "
            + percent(report.peakChange())
            + " in the last refinement around it";
    List<Entry> list = new ArrayList<>();
    list.add(
        solved(
            "torsion modulus", "W_t", torsion.torsionModulus(), Dimension.SECTION_MODULUS, peaks));
    list.add(
        solved(
            "warping constant",
            "I_w",
            torsion.warpingConstant(),
            Dimension.WARPING_CONSTANT,
            warping));
    list.add(
        solved(
            "shear centre from the centroid, along y",
            "y_s",
            shearCentre.y(),
            Dimension.LENGTH,
            report.label()));
    list.add(
        solved(
            "shear centre from the centroid, along z",
            "z_s",
            shearCentre.z(),
            Dimension.LENGTH,
            report.label()));
    list.add(
        solved("the same for the given ν, along y", "y_sν", elastic.y(), Dimension.LENGTH, areas));
    list.add(
        solved("the same for the given ν, along z", "z_sν", elastic.z(), Dimension.LENGTH, areas));
    list.add(
        solved(
            "shear area along y of the outline", "A_s_yg", shear.areaY(), Dimension.AREA, areas));
    list.add(
        solved(
            "shear area along z of the outline", "A_s_zg", shear.areaZ(), Dimension.AREA, areas));
    list.add(
        solved(
            "shear energy of unit forces on each other",
            "c_yz",
            shear.coupling(),
            PER_AREA,
            areas));
    list.add(
        solved(
            "shear along the principal y axis over its largest stress",
            "tau_A_y",
            1 / field.peakShear(angle).stress(),
            Dimension.AREA,
            peaks));
    list.add(
        solved(
            "shear along the principal z axis over its largest stress",
            "tau_A_z",
            1 / field.peakShear(angle + Math.PI / 2).stress(),
            Dimension.AREA,
            peaks));
    list.add(
        solved(
            "asymmetry for bending about y",
            "z_j",
            field.asymmetry().zJ(),
            Dimension.LENGTH,
            report.label()));
    list.add(
        solved(
            "asymmetry for bending about z",
            "y_j",
            field.asymmetry().yJ(),
            Dimension.LENGTH,
            report.label()));
    list.add(
        solved(
            "polar radius of gyration about the shear centre",
            "i_s",
            field.asymmetry().polarRadius(),
            Dimension.LENGTH,
            report.label()));
    return list;
  }

  private String changing(String what, double change) {
    return "finite elements: "
        + what
        + " moved by "
        + percent(change)
        + " in the last refinement of "
        + report.triangles()
        + " triangles";
  }

  private static String percent(double part) {
    return String.format(Locale.ROOT, "%.2g %%", 100 * part);
  }

  private List<Entry> mesh() {
    return List.of(
        Entry.text("triangles with 6 nodes", Integer.toString(report.triangles())),
        Entry.text("nodes", Integer.toString(report.nodes())),
        Entry.text("refinements", Integer.toString(report.refinements())),
        Entry.text(
            "least angle of the triangles",
            String.format(Locale.ROOT, "%.1f°", Math.toDegrees(report.leastAngle()))),
        Entry.text("error of I_t, a bound", percent(report.torsionError())),
        Entry.text("error of the meshed shape (arcs as parabolas)", percent(report.shapeError())),
        Entry.text("target for both", percent(report.target())),
        Entry.text("target met", report.targetMet() ? "yes" : "NO"));
  }

  private static Entry solved(
      String words, String symbol, double value, Dimension dimension, String label) {
    return Entry.number(words, symbol, LedgerCell.solved(value), dimension)
        .withSource(Source.derived(label));
  }

  /** A value by its symbol. */
  NumberAt value(String symbol) {
    return switch (symbol) {
      case "W_t" -> values.number("torsion modulus");
      case "I_w" -> values.number("warping constant");
      case "y_s" -> values.number("shear centre from the centroid, along y");
      case "z_s" -> values.number("shear centre from the centroid, along z");
      case "A_s_yg" -> values.number("shear area along y of the outline");
      case "A_s_zg" -> values.number("shear area along z of the outline");
      case "c_yz" -> values.number("shear energy of unit forces on each other");
      case "z_j" -> values.number("asymmetry for bending about y");
      case "y_j" -> values.number("asymmetry for bending about z");
      case "tau_A_y" -> values.number("shear along the principal y axis over its largest stress");
      case "tau_A_z" -> values.number("shear along the principal z axis over its largest stress");
      default -> throw new IllegalArgumentException("Finite elements give no " + symbol + ".");
    };
  }
}
