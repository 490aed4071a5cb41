package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.extrusion.ExtrusionReport;
import spanledger.material.Alloy;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.section.warping.FieldReport;
import spanledger.workbook.layout.Entry;
import spanledger.workbook.layout.EntryCells;
import spanledger.workbook.layout.EntryList;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.Outcome;

/** All properties of an extrusion on one page, each a link to where it is worked out. */
final class PropertySummary {

  private static final double HALVES_AGREE = 1e-9;
  private static final String HALVES_AGREE_TEXT = "0.000000001";

  private final LedgerSheet sheet;
  private final ExtrusionReport report;
  private final FieldReport mesh;
  private final OutlineSheets outline;

  private PropertySummary(
      LedgerSheet sheet, ExtrusionReport report, FieldReport mesh, OutlineSheets outline) {
    this.mesh = mesh;
    this.sheet = sheet;
    this.report = report;
    this.outline = outline;
  }

  static void write(
      LedgerSheet sheet, ExtrusionReport report, FieldReport mesh, OutlineSheets outline) {
    new PropertySummary(sheet, report, mesh, outline).write();
  }

  private void write() {
    sheet.title(
        "Properties of " + report.name(),
        "Each a link to the sheet that works it out; y to the right, z up, 1 the major principal"
            + " axis.");
    if (!report.study().plates().isSure()) {
      sheet.note("Plates are UNSURE: local buckling is NOT CHECKED; see Plates.");
    }
    sheet.add(new EntryList("Exact, from the outline", exact()));
    sheet.add(new EntryList("By finite elements", byElements()));
    sheet.add(new EntryList("Slenderness of plates, 0 if none", plates()));
    report.alloy().ifPresent(this::mass);
    sheet.add(new EntryList("Proofs", proofs()));
  }

  private List<Entry> exact() {
    List<Entry> list = new ArrayList<>();
    list.add(linked("area", "A", outline.total("A"), Dimension.AREA));
    list.add(linked("length of the boundary", "L", outline.total("L"), Dimension.LENGTH));
    list.add(
        Entry.number(
            "y of the centroid", "y_C", outline.centroid("y", sheet.name()), Dimension.LENGTH));
    list.add(
        Entry.number(
            "z of the centroid", "z_C", outline.centroid("z", sheet.name()), Dimension.LENGTH));
    for (String axis : List.of("y", "z", "yz", "1", "2")) {
      String words = axis.equals("yz") ? "product moment" : "second moment about axis " + axis;
      list.add(linked(words, "I_" + axis, outline.axes("I_" + axis), Dimension.SECOND_MOMENT));
    }
    list.add(
        linked("angle of axis 1, to the left of y", "α_1", outline.axes("α_1"), Dimension.NONE)
            .withUnit("rad"));
    for (String axis : List.of("y", "z", "1", "2")) {
      list.add(
          linked(
              "radius of gyration about axis " + axis,
              "i_" + axis,
              outline.axes("i_" + axis),
              Dimension.LENGTH));
    }
    outline
        .bending()
        .forEach(
            (axis, tables) -> {
              list.add(
                  linked(
                      "least elastic modulus about axis " + axis,
                      "W_el," + axis,
                      tables.elasticModulus(),
                      Dimension.SECTION_MODULUS));
              list.add(
                  linked(
                      "plastic modulus about axis " + axis,
                      "W_pl," + axis,
                      tables.plasticModulus(),
                      Dimension.SECTION_MODULUS));
            });
    return list;
  }

  private List<Entry> byElements() {
    Source label = Source.derived(mesh.label());
    List<Entry> list = new ArrayList<>();
    list.add(
        linked("torsion constant", "I_t", outline.fieldValue("I_t"), Dimension.SECOND_MOMENT)
            .withSource(label));
    list.add(
        linked("torsion modulus", "W_t", outline.fieldValue("W_t"), Dimension.SECTION_MODULUS));
    list.add(
        linked("warping constant", "I_w", outline.fieldValue("I_w"), Dimension.WARPING_CONSTANT));
    for (String axis : List.of("y", "z")) {
      list.add(
          linked(
              "shear centre from the centroid, along " + axis,
              axis + "_s",
              outline.fieldValue(axis + "_s"),
              Dimension.LENGTH));
    }
    for (String axis : List.of("y", "z")) {
      list.add(
          linked(
              "shear area along " + axis,
              "A_s_" + axis + "g",
              outline.fieldValue("A_s_" + axis + "g"),
              Dimension.AREA));
    }
    list.add(
        linked(
            "asymmetry for bending about y", "z_j", outline.fieldValue("z_j"), Dimension.LENGTH));
    list.add(
        linked(
            "asymmetry for bending about z", "y_j", outline.fieldValue("y_j"), Dimension.LENGTH));
    return list;
  }

  private List<Entry> plates() {
    return List.of(
        linked("inner plate along z", "s_web", outline.slenderness("s_web"), Dimension.NONE),
        linked(
            "inner plate along y",
            "s_flange_int",
            outline.slenderness("s_flange_int"),
            Dimension.NONE),
        linked("outstand", "s_flange_out", outline.slenderness("s_flange_out"), Dimension.NONE),
        linked("round tube", "s_round", outline.slenderness("s_round"), Dimension.NONE));
  }

  private void mass(Alloy alloy) {
    String words = "density of " + alloy.designation();
    EntryCells density =
        sheet.add(
            new EntryList(
                "Mass",
                List.of(
                    Entry.given(words, "ρ", alloy.density(), Dimension.DENSITY, alloy.source()))));
    NumberAt rho = density.number(words);
    NumberAt area = outline.total("A");
    sheet.add(
        new EntryList(
            "",
            List.of(
                Entry.number(
                        "mass per length",
                        "m",
                        LedgerCell.live(
                            area.from(sheet.name()) + "*" + rho.from(sheet.name()),
                            area.value() * rho.value()),
                        Dimension.NONE)
                    .withUnit("kg/mm"))));
  }

  private List<Entry> proofs() {
    List<Entry> proofs = new ArrayList<>();
    outline
        .bending()
        .forEach(
            (axis, tables) -> {
              NumberAt residual = tables.plasticResidual();
              proofs.add(
                  new Entry(
                      "areas on both sides of the plastic neutral axis parallel to " + axis,
                      "",
                      LedgerCell.judged(
                          "ABS(" + residual.from(sheet.name()) + ")<" + HALVES_AGREE_TEXT,
                          Math.abs(residual.value()) < HALVES_AGREE,
                          Outcome.AGREES,
                          Outcome.DIFFERS),
                      "",
                      Dimension.NONE,
                      Optional.empty()));
            });
    return proofs;
  }

  private static Entry linked(String words, String symbol, NumberAt target, Dimension dimension) {
    return Entry.number(words, symbol, LedgerCell.linked(target), dimension);
  }
}
