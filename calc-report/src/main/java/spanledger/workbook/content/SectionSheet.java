package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import spanledger.deck.DeckUse;
import spanledger.deck.PlankPanel;
import spanledger.frame.Member;
import spanledger.job.Job;
import spanledger.material.Alloy;
import spanledger.picture.Lettering;
import spanledger.procedure.Procedure;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.section.OutlineShape;
import spanledger.section.PropertyRow;
import spanledger.section.Section;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.ProcedureTable;

/** Section properties from their outlines, and alloys. */
final class SectionSheet {

  private static final Source JOB = Source.declared("job file");

  private record Place(ProcedureCells table, int row) {}

  private final Map<String, Place> sections = new HashMap<>();
  private final Map<Alloy, Integer> alloyRows = new LinkedHashMap<>();
  private final List<OutlineSheets> outlines = new ArrayList<>();
  private @Nullable Lettering lettering;
  private DataCells alloys;

  private SectionSheet(LedgerWorkbook workbook, Job job) {
    LedgerSheet sheet = workbook.sheet(SheetNames.SECTIONS);
    sheet.title(
        "Sections and alloys",
        "Properties by formula from the outer sizes, corners sharp, or from outlines on sheets of their"
            + " own; y is the major axis, z points up through the depth.");
    Map<String, List<Section>> byProcedure = new LinkedHashMap<>();
    for (Member member : job.frame().members()) {
      alloyRows.putIfAbsent(member.alloy(), alloyRows.size());
      add(member.section(), byProcedure);
    }
    for (DeckUse use : job.deck().uses()) {
      if (use.panel() instanceof PlankPanel plank) {
        alloyRows.putIfAbsent(plank.alloy(), alloyRows.size());
        add(plank.section(), byProcedure);
      }
    }
    alloys = writeAlloys(sheet);
    for (List<Section> same : byProcedure.values()) {
      writeSections(workbook, sheet, same);
    }
  }

  private static void add(Section section, Map<String, List<Section>> byProcedure) {
    List<Section> same =
        byProcedure.computeIfAbsent(section.shape().procedure().name(), n -> new ArrayList<>());
    if (same.stream().noneMatch(s -> s.name().equals(section.name()))) {
      same.add(section);
    }
  }

  static SectionSheet write(LedgerWorkbook workbook, Job job) {
    return new SectionSheet(workbook, job);
  }

  private void writeSections(LedgerWorkbook workbook, LedgerSheet sheet, List<Section> same) {
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (Section section : same) {
      rows.add(new ProcedureTable.Row(List.of(section.name()), inputs(workbook, section)));
    }
    ProcedureTable table =
        new ProcedureTable(
            capitalised(same.get(0).shape().kind()),
            same.get(0).shape().compiled(),
            List.of(new ProcedureTable.Label("section", 18)),
            rows);
    ProcedureCells cells = sheet.add(table);
    for (int i = 0; i < same.size(); i++) {
      sections.put(same.get(i).name(), new Place(cells, i));
    }
  }

  private List<InputCell> inputs(LedgerWorkbook workbook, Section section) {
    if (section.shape() instanceof OutlineShape shape) {
      OutlineSheets sheets =
          new OutlineSheets(
              workbook,
              "S" + (outlines.size() + 1) + " ",
              section.name(),
              shape,
              shape.source(),
              false,
              lettering());
      outlines.add(sheets);
      return Inputs.of(shape.compiled(), sheets::input);
    }
    List<InputCell> inputs = new ArrayList<>();
    Source source = section.shape() instanceof PropertyRow row ? row.source() : JOB;
    for (double value : section.shape().inputs()) {
      inputs.add(InputCell.literal(value, source));
    }
    return inputs;
  }

  private static String capitalised(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  private DataCells writeAlloys(LedgerSheet sheet) {
    List<Column> columns =
        List.of(
            Column.text("alloy", 18),
            Column.text("thickness", 24),
            Column.number("f_o", "0.2 % proof strength", Dimension.STRESS),
            Column.number("f_u", "ultimate strength", Dimension.STRESS),
            Column.text("buckling class", 14),
            Column.number("E", "modulus of elasticity", Dimension.STRESS),
            Column.number("G", "shear modulus", Dimension.STRESS),
            Column.number("ρ", "density", Dimension.DENSITY),
            Column.wrapped("source", 44),
            Column.text("confidence", 36),
            Column.wrapped("note", 40));
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (Alloy alloy : alloyRows.keySet()) {
      rows.add(
          List.of(
              LedgerCell.text(alloy.designation()),
              LedgerCell.text(alloy.thickness().words()),
              LedgerCell.given(alloy.proofStrength()),
              LedgerCell.given(alloy.ultimateStrength()),
              LedgerCell.text(alloy.bucklingClass().name()),
              LedgerCell.given(alloy.youngsModulus()),
              LedgerCell.given(alloy.shearModulus()),
              LedgerCell.given(alloy.density()),
              LedgerCell.text(alloy.source().citation()),
              LedgerCell.text(alloy.source().confidence().words()),
              LedgerCell.text(alloy.note())));
    }
    return sheet.add(new DataTable("Alloys", columns, rows));
  }

  /** A property of a section by its symbol. */
  NumberAt property(Section section, String symbol) {
    Place place = sections.get(section.name());
    if (place == null) {
      throw new IllegalArgumentException("Section " + section.name() + " is not in the workbook.");
    }
    return place.table().number(place.row(), symbol);
  }

  /** A size or property of a section by its symbol, if its calculation has it. */
  Optional<NumberAt> find(Section section, String symbol) {
    Place place = sections.get(section.name());
    if (place == null || !has(place.table().procedure().procedure(), symbol)) {
      return Optional.empty();
    }
    return Optional.of(place.table().number(place.row(), symbol));
  }

  private static boolean has(Procedure procedure, String symbol) {
    return Stream.concat(
            procedure.inputs().stream().map(input -> input.symbol().symbol()),
            procedure.steps().stream().map(step -> step.symbol().symbol()))
        .anyMatch(symbol::equals);
  }

  /** A property of an alloy by its symbol: f_o, f_u, E, G or ρ. */
  NumberAt alloy(Alloy alloy, String symbol) {
    Integer row = alloyRows.get(alloy);
    if (row == null) {
      throw new IllegalArgumentException(
          "Alloy " + alloy.designation() + " is not in the workbook.");
    }
    return alloys.number(row, symbol);
  }

  /** The tables of sections, one per kind. */
  Set<ProcedureCells> tables() {
    Set<ProcedureCells> tables = new java.util.LinkedHashSet<>();
    sections.values().forEach(p -> tables.add(p.table()));
    return tables;
  }

  /** Read once, and only for jobs that have outlines. */
  private Lettering lettering() {
    Lettering known = lettering;
    if (known == null) {
      known = Lettering.read();
      lettering = known;
    }
    return known;
  }

  /** The procedures on the sheets of outlines. */
  List<Procedure> outlineProcedures() {
    return outlines.stream().flatMap(sheets -> sheets.procedures().stream()).toList();
  }
}
