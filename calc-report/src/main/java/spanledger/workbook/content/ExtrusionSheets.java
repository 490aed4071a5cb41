package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import spanledger.extrusion.ExtrusionReport;
import spanledger.material.Alloy;
import spanledger.picture.Lettering;
import spanledger.procedure.Procedure;
import spanledger.provenance.Source;
import spanledger.section.OutlineShape;
import spanledger.section.warping.FieldReport;
import spanledger.workbook.layout.Calculation;
import spanledger.workbook.layout.Caution;
import spanledger.workbook.layout.Entry;
import spanledger.workbook.layout.EntryList;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.Legend;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.SignOff;
import spanledger.workbook.layout.WorkedPage;

/** Puts the sheets of an extrusion's workbook together. */
public final class ExtrusionSheets {

  private ExtrusionSheets() {}

  /** Writes all sheets. */
  public static void write(LedgerWorkbook workbook, ExtrusionReport report, Lettering lettering) {
    OutlineShape shape =
        report
            .shape()
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "The workbook is of one piece; " + report.name() + " has several."));
    basis(workbook, report, shape.field().report());
    LedgerSheet summary = workbook.sheet("Properties");
    LedgerSheet forChecks = workbook.sheet("For member checks");
    OutlineSheets outline =
        new OutlineSheets(workbook, "", report.name(), shape, report.source(), true, lettering);
    PropertySummary.write(summary, report, shape.field().report(), outline);
    forChecks(forChecks, report.name(), shape, outline);
    worked(workbook, outline);
    Set<Procedure> procedures = new LinkedHashSet<>(outline.procedures());
    procedures.add(OutlineShape.PROCEDURE);
    List<SourceSheet.Use> others = new ArrayList<>();
    others.add(new SourceSheet.Use(report.source(), "Outline", "vertices of the outline"));
    report
        .alloy()
        .ifPresent(
            alloy -> others.add(new SourceSheet.Use(alloy.source(), "Alloy", alloy.designation())));
    others.add(
        new SourceSheet.Use(
            Source.fromMemory("EN 1999-1-1:2007", "Annex I"),
            "Finite elements",
            "definition of z_j and y_j"));
    SourceSheet.write(workbook, List.copyOf(procedures), others);
  }

  private static void basis(LedgerWorkbook workbook, ExtrusionReport report, FieldReport mesh) {
    LedgerSheet sheet = workbook.sheet(SheetNames.BASIS);
    sheet.title(report.name(), "Section properties of an extrusion, from its outline");
    List<String> cautions = new ArrayList<>();
    if (!report.study().plates().isSure()) {
      cautions.add(
          "The plates are UNSURE: local buckling is NOT CHECKED with them until someone settles what"
              + " the sheet Plates and mesh lists.");
    }
    if (!mesh.targetMet()) {
      cautions.add("The finite elements did NOT REACH their target; see Finite elements.");
    }
    cautions.add(
        "Dimensions are those of the drawing; tolerances of the die are not covered."
            + " Figures marked 'from memory' must be confirmed against the standard.");
    sheet.add(new Caution(cautions));
    sheet.add(
        new EntryList(
            "Extrusion",
            List.of(
                Entry.text("name", report.name()),
                Entry.text("drawing", report.extrusion().source()),
                Entry.text("outline from", report.origin()),
                Entry.text(
                    "its SHA-256",
                    report.sha256().isEmpty() ? "none, from the catalogue" : report.sha256()),
                Entry.text("alloy", report.alloy().map(Alloy::designation).orElse("not named")))));
    if (!report.extrusion().corrections().isEmpty()) {
      sheet.note(
          "Plates corrected by "
              + report.extrusion().corrections().by()
              + "; see the sheet Plates.");
    }
    sheet.heading("What the values rest on");
    BASIS.forEach(sheet::note);
    sheet.heading("How to audit it");
    AUDIT.forEach(sheet::note);
    sheet.add(new Legend());
    sheet.add(new SignOff());
  }

  private static void forChecks(
      LedgerSheet sheet, String name, OutlineShape shape, OutlineSheets outline) {
    sheet.title(
        "Properties of " + name + " for member checks",
        "Axes y and z of these properties are the principal axes nearest to those of the outline.");
    sheet.add(new Calculation("", shape.compiled(), Inputs.of(shape.compiled(), outline::input)));
  }

  private static void worked(LedgerWorkbook workbook, OutlineSheets outline) {
    LedgerSheet sheet = workbook.sheet(SheetNames.WORKED);
    sheet.title(
        "Worked page",
        "One row of each table of the outline in full. Change the number in a thick box to see"
            + " another row.");
    for (ProcedureCells table : outline.tables()) {
      sheet.heading(table.procedure().procedure().title());
      sheet.add(new WorkedPage(table, 0));
    }
  }

  private static final List<String> BASIS =
      List.of(
          "Core units: N, mm, MPa, rad, kg. Axes of the outline: y to the right, z up, x at the viewer.",
          "Area, centroid, second moments and extreme fibres follow from the outline exactly, arcs"
              + " included, by live formulas.",
          "Plastic moduli: the neutral axis is found by search, and live formulas prove that it halves"
              + " the area.",
          "Torsion constant, warping, shear centre, shear areas and largest shear stresses are found by"
              + " finite elements; mesh and error stand beside each. The error of the torsion constant"
              + " is a bound, not an estimate, for the meshed shape.",
          "Plates for local buckling are recognised from the outline; what is unsure is said, and the"
              + " user's changes are named.");

  private static final List<String> AUDIT =
      List.of(
          "1. Compare the vertices on the sheet Outline with the drawing; Pictures shows them.",
          "2. Follow one edge and one arc on the Worked page; the other rows are the same formulas.",
          "3. The sums stand at the end of the sheet Outline; Axes and torsion goes on from them.",
          "4. Sheets Axis ..: the residuals ε, and those of the cuts, are zero but for rounding.",
          "5. Change a vertex here, and everything but the solver values follows; the residuals and"
              + " Proofs then say DIFFERS, because the neutral axis belongs to the old outline. Change"
              + " it in the file and run again.",
          "6. Plates: compare with the picture of the plates, and look at what is unsure.");
}
