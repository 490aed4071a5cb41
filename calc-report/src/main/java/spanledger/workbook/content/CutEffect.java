package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import spanledger.analysis.ChordDeflection;
import spanledger.analysis.EndForces;
import spanledger.analysis.SectionForces;
import spanledger.envelope.Station;
import spanledger.frame.Segment;
import spanledger.frame.Vector;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.resistance.PointDisplacement;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.ProcedureTable;

/** An internal force or a movement at a cut, from what is done to its segment, row by row. */
final class CutEffect {

  private static final Set<String> OF_STIFFNESS = Set.of("E", "G", "I_y", "I_z", "A_v_y", "A_v_z");
  private static final Source DIRECTION = Source.declared("direction of the movement looked at");

  /**
   * What is done to the segment; each function gives cells by the symbols of the procedures.
   *
   * @param words what it is
   * @param deformation e, φ, θ_y1 ...
   * @param movement u_X1 ... of the ends
   * @param moment m_0x ... of the loads
   * @param before g_0x ... of the loads before the cut
   */
  record Done(
      String words,
      Function<String, InputCell> deformation,
      Function<String, InputCell> movement,
      Function<String, InputCell> moment,
      Function<String, InputCell> before) {}

  private final LedgerSheet sheet;
  private final SegmentSheets segments;
  private final NumberAt place;

  /**
   * @param place the cell with the place of the cut
   */
  CutEffect(LedgerSheet sheet, SegmentSheets segments, NumberAt place) {
    this.sheet = sheet;
    this.segments = segments;
    this.place = place;
  }

  /** Writes the tables; the effect of each row. */
  List<NumberAt> write(InfluencePick.Effect effect, List<Done> rows) {
    Station station;
    if (effect instanceof InfluencePick.Force force) {
      station = force.station();
    } else if (effect instanceof InfluencePick.Movement moved) {
      station = moved.station();
    } else {
      throw new IllegalArgumentException("A reaction has no cut.");
    }
    Segment segment = station.segment();
    ProcedureCells ends =
        table(
            EndForces.PROCEDURE.compile(),
            rows,
            (row, symbol) -> endForce(rows.get(row), segment, symbol));
    if (effect instanceof InfluencePick.Force force) {
      ProcedureCells forces =
          table(
              SectionForces.PROCEDURE.compile(),
              rows,
              (row, symbol) ->
                  symbol.startsWith("g_")
                      ? rows.get(row).before().apply(symbol)
                      : InputCell.inline(symbol.equals("x") ? place : ends.number(row, symbol)));
      return numbers(forces, force.force().symbol(), rows.size());
    }
    Vector direction = ((InfluencePick.Movement) effect).direction();
    ProcedureCells chords =
        table(
            ChordDeflection.PROCEDURE.compile(),
            rows,
            (row, symbol) -> chord(rows.get(row), segment, ends, row, symbol));
    ProcedureCells moved =
        table(
            PointDisplacement.PROCEDURE.compile(),
            rows,
            (row, symbol) -> point(rows.get(row), segment, direction, chords, row, symbol));
    return numbers(moved, "δ", rows.size());
  }

  private static List<NumberAt> numbers(ProcedureCells cells, String symbol, int count) {
    List<NumberAt> numbers = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      numbers.add(cells.number(i, symbol));
    }
    return numbers;
  }

  /** Gives the cell of an input by row and symbol. */
  private interface Cells {
    InputCell of(int row, String symbol);
  }

  private ProcedureCells table(CompiledProcedure procedure, List<Done> rows, Cells cells) {
    List<ProcedureTable.Row> table = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      int row = i;
      table.add(
          new ProcedureTable.Row(
              List.of(rows.get(i).words()), Inputs.of(procedure, symbol -> cells.of(row, symbol))));
    }
    return sheet.add(
        new ProcedureTable(
            procedure.procedure().title(),
            procedure,
            List.of(new ProcedureTable.Label("what is done", 34)),
            table));
  }

  private InputCell endForce(Done done, Segment segment, String symbol) {
    if (symbol.startsWith("m_")) {
      return done.moment().apply(symbol);
    } else if (symbol.equals("L")) {
      return InputCell.inline(segments.geometry(segment, symbol));
    } else if (symbol.startsWith("s_") || OF_STIFFNESS.contains(symbol)) {
      return InputCell.inline(segments.stiffness(segment, symbol));
    }
    return done.deformation().apply(symbol);
  }

  private InputCell chord(Done done, Segment segment, ProcedureCells ends, int row, String symbol) {
    if (symbol.equals("x")) {
      return InputCell.inline(place);
    } else if (symbol.startsWith("F_") || symbol.startsWith("M_")) {
      return InputCell.inline(ends.number(row, symbol));
    } else if (symbol.startsWith("g_")) {
      return done.before().apply(symbol);
    } else if (symbol.startsWith("m_")) {
      return done.moment().apply(symbol);
    } else if (symbol.equals("L")) {
      return InputCell.inline(segments.geometry(segment, symbol));
    }
    return InputCell.inline(segments.stiffness(segment, symbol));
  }

  private InputCell point(
      Done done, Segment segment, Vector direction, ProcedureCells chords, int row, String symbol) {
    if (symbol.startsWith("D_")) {
      double part =
          switch (symbol.charAt(2)) {
            case 'X' -> direction.x();
            case 'Y' -> direction.y();
            default -> direction.z();
          };
      return InputCell.literal(part, DIRECTION);
    } else if (symbol.equals("x")) {
      return InputCell.inline(place);
    } else if (symbol.equals("d_y") || symbol.equals("d_z")) {
      return InputCell.inline(chords.number(row, symbol));
    }
    for (String movement : MovementSheet.SYMBOLS) {
      if (symbol.equals(movement + "1") || symbol.equals(movement + "2")) {
        return done.movement().apply(symbol);
      }
    }
    return InputCell.inline(segments.geometry(segment, symbol));
  }
}
