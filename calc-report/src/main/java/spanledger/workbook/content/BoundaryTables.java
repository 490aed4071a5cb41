package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.procedure.CompiledProcedure;
import spanledger.quantity.Dimension;
import spanledger.section.outline.ArcIntegrals;
import spanledger.section.outline.EdgeIntegrals;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.ProcedureTable;

/**
 * The integrals over an area as sums over the pieces of its boundary: straight edges, chords of
 * arcs, and what arcs add beyond their chords.
 */
final class BoundaryTables {

  private static final CompiledProcedure EDGE = EdgeIntegrals.PROCEDURE.compile();
  private static final CompiledProcedure ARC = ArcIntegrals.PROCEDURE.compile();

  /**
   * A piece of the boundary.
   *
   * @param name for example {@code edge 3}
   * @param ends y and z of the start, y and z of the end
   * @param bulge if it is an arc
   */
  record Piece(String name, List<InputCell> ends, Optional<InputCell> bulge) {
    Piece {
      ends = List.copyOf(ends);
    }

    boolean isArc() {
      return bulge.isPresent();
    }
  }

  private final Optional<ProcedureCells> straight;
  private final Optional<ProcedureCells> chords;
  private final Optional<ProcedureCells> arcs;

  private BoundaryTables(LedgerSheet sheet, String of, List<Piece> pieces) {
    List<Piece> bent = pieces.stream().filter(Piece::isArc).toList();
    straight =
        write(sheet, "Straight edges" + of, EDGE, pieces.stream().filter(p -> !p.isArc()).toList());
    chords = write(sheet, "Chords of arcs" + of, EDGE, bent);
    arcs = write(sheet, "Arcs" + of + ", beyond their chords", ARC, bent);
  }

  /**
   * Writes the tables.
   *
   * @param of ends their titles; may be empty
   */
  static BoundaryTables write(LedgerSheet sheet, String of, List<Piece> pieces) {
    return new BoundaryTables(sheet, of, pieces);
  }

  private static Optional<ProcedureCells> write(
      LedgerSheet sheet, String title, CompiledProcedure procedure, List<Piece> pieces) {
    if (pieces.isEmpty()) {
      return Optional.empty();
    }
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (Piece piece : pieces) {
      List<InputCell> inputs = new ArrayList<>(piece.ends());
      if (procedure == ARC) {
        piece.bulge().ifPresent(inputs::add);
      }
      rows.add(new ProcedureTable.Row(List.of(piece.name()), inputs));
    }
    return Optional.of(
        sheet.add(
            new ProcedureTable(
                title, procedure, List.of(new ProcedureTable.Label("piece", 18)), rows)));
  }

  /** The sum of an integral over all pieces, by the symbol of a piece's share. */
  Total sum(String symbol, String formulaSheet) {
    Total total = new Total(formulaSheet);
    straight.ifPresent(table -> total.plus(table, symbol));
    // The length of an arc is not that of its chord.
    if (!symbol.equals("ΔL")) {
      chords.ifPresent(table -> total.plus(table, symbol));
    }
    arcs.ifPresent(table -> total.plus(table, symbol));
    return total;
  }

  /** What arcs add beyond their chords; empty if there are none. */
  Optional<ProcedureCells> arcs() {
    return arcs;
  }

  /** A step of an arc's row, arcs counted from 0. */
  NumberAt arc(int number, String symbol) {
    return arcs.orElseThrow().number(number, symbol);
  }

  /** All tables. */
  List<ProcedureCells> tables() {
    List<ProcedureCells> tables = new ArrayList<>();
    straight.ifPresent(tables::add);
    chords.ifPresent(tables::add);
    arcs.ifPresent(tables::add);
    return tables;
  }

  /** A live sum over columns of tables, with its value. */
  static final class Total {
    private final String sheet;
    private final List<String> terms = new ArrayList<>();
    private double value;

    Total(String sheet) {
      this.sheet = sheet;
    }

    private void plus(ProcedureCells table, String symbol) {
      terms.add("SUM(" + table.column(symbol).from(sheet) + ")");
      for (int row = 0; row < table.rows(); row++) {
        value += table.value(row, symbol);
      }
    }

    String formula() {
      return String.join("+", terms);
    }

    double value() {
      return value;
    }

    /** Dimension of the integral with this symbol of a share. */
    static Dimension dimension(String symbol) {
      return switch (symbol) {
        case "ΔL" -> Dimension.LENGTH;
        case "ΔA" -> Dimension.AREA;
        case "ΔS_z", "ΔS_y" -> Dimension.SECTION_MODULUS;
        default -> Dimension.SECOND_MOMENT;
      };
    }
  }
}
