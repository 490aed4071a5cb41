package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.action.DeckStrip;
import spanledger.action.DistanceAcross;
import spanledger.frame.Node;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.ProcedureTable;

/** The widths of floor that lines of members carry, from the coordinates of their nodes. */
final class DeckStripTables {

  private static final Source NONE = Source.declared("0 where there is no line or overhang");
  private static final List<String> AXES = List.of("X", "Y", "Z");

  /** A distance across a floor. */
  private record Gap(Node from, Node to, Node cornerA, Node cornerB) {}

  private final NodeSheet nodes;
  private final Map<Gap, NumberAt> gaps = new HashMap<>();
  private final Map<DeckStrip, NumberAt> widths = new HashMap<>();

  private DeckStripTables(NodeSheet nodes) {
    this.nodes = nodes;
  }

  static DeckStripTables write(LedgerSheet sheet, List<DeckStrip> strips, NodeSheet nodes) {
    DeckStripTables tables = new DeckStripTables(nodes);
    if (!strips.isEmpty()) {
      tables.writeGaps(sheet, strips);
      tables.writeStrips(sheet, strips);
    }
    return tables;
  }

  private void writeGaps(LedgerSheet sheet, List<DeckStrip> strips) {
    List<Gap> distinct = new ArrayList<>();
    for (DeckStrip strip : strips) {
      for (Optional<Gap> gap : gaps(strip)) {
        gap.filter(g -> !distinct.contains(g)).ifPresent(distinct::add);
      }
    }
    CompiledProcedure procedure = DistanceAcross.PROCEDURE.compile();
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (Gap gap : distinct) {
      rows.add(
          new ProcedureTable.Row(
              List.of(gap.from().name(), gap.to().name()),
              Inputs.of(procedure, symbol -> coordinate(gap, symbol))));
    }
    ProcedureCells cells = table(sheet, "Distances across floors", procedure, rows);
    for (int i = 0; i < distinct.size(); i++) {
      gaps.put(distinct.get(i), cells.number(i, "d"));
    }
  }

  private InputCell coordinate(Gap gap, String symbol) {
    Node node =
        switch (symbol.charAt(2)) {
          case 'P' -> gap.from();
          case 'Q' -> gap.to();
          case 'A' -> gap.cornerA();
          default -> gap.cornerB();
        };
    return InputCell.shown(nodes.place(node, AXES.indexOf(symbol.substring(0, 1))));
  }

  private void writeStrips(LedgerSheet sheet, List<DeckStrip> strips) {
    CompiledProcedure procedure = DeckStrip.PROCEDURE.compile();
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (DeckStrip strip : strips) {
      List<InputCell> inputs = new ArrayList<>();
      for (Optional<Gap> gap : gaps(strip)) {
        inputs.add(
            gap.map(g -> InputCell.shown(Required.of(gaps.get(g), "A distance")))
                .orElse(InputCell.literal(0, NONE)));
      }
      rows.add(
          new ProcedureTable.Row(
              List.of(strip.on().name(), strip.cornerA().name() + " to " + strip.cornerB().name()),
              inputs));
    }
    ProcedureCells cells = table(sheet, "Widths of floor carried", procedure, rows);
    for (int i = 0; i < strips.size(); i++) {
      widths.put(strips.get(i), cells.number(i, "b_t"));
    }
  }

  private static ProcedureCells table(
      LedgerSheet sheet, String title, CompiledProcedure procedure, List<ProcedureTable.Row> rows) {
    return sheet.add(
        new ProcedureTable(
            title,
            procedure,
            List.of(new ProcedureTable.Label("node", 34), new ProcedureTable.Label("to", 22)),
            rows));
  }

  /** The distances of a strip in the order of the procedure's inputs. */
  private static List<Optional<Gap>> gaps(DeckStrip strip) {
    return List.of(
        gap(strip, Optional.of(strip.on()), strip.before()),
        gap(strip, Optional.of(strip.on()), strip.after()),
        gap(strip, Optional.of(strip.on()), strip.overhangTo()),
        gap(strip, strip.before(), strip.overhangBeforeTo()),
        gap(strip, strip.after(), strip.overhangAfterTo()));
  }

  private static Optional<Gap> gap(DeckStrip strip, Optional<Node> from, Optional<Node> to) {
    return from.flatMap(f -> to.map(t -> new Gap(f, t, strip.cornerA(), strip.cornerB())));
  }

  /** The width that a strip carries. */
  NumberAt width(DeckStrip strip) {
    return Required.of(widths.get(strip), "The width of a strip of floor");
  }
}
