package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import spanledger.analysis.BeamColumnDeflection;
import spanledger.frame.Segment;
import spanledger.procedure.CompiledProcedure;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.ProcedureTable;

/** Deflections from the chord at cuts of states: at rest, and with what the axial force adds. */
final class StateDeflections {

  private static final List<String> AT_REST = List.of("F_y1", "F_z1");

  private final LedgerSheet sheet;
  private final StateSheets states;
  private final CutSheets cuts;
  private final SegmentSheets segments;
  private final List<Cut> own = new ArrayList<>();
  private final Map<String, Integer> rows = new HashMap<>();
  private final List<ProcedureCells> tables = new ArrayList<>();

  /** Begins with the forces that balance the moments at rest. */
  StateDeflections(
      LedgerSheet sheet,
      List<Cut> all,
      StateSheets states,
      CutSheets cuts,
      SegmentSheets segments) {
    this.sheet = sheet;
    this.states = states;
    this.cuts = cuts;
    this.segments = segments;
    for (Cut cut : all) {
      if (cuts.state(cut).isPresent() && !rows.containsKey(cut.key())) {
        rows.put(cut.key(), own.size());
        own.add(cut);
      }
    }
    if (!own.isEmpty()) {
      CompiledProcedure procedure = BeamColumnDeflection.AT_REST.compile();
      write(procedure, cut -> symbol -> ofState(cut, symbol));
    }
  }

  private void write(
      CompiledProcedure procedure, Function<Cut, Function<String, InputCell>> inputs) {
    List<ProcedureTable.Row> table = new ArrayList<>();
    for (Cut cut : own) {
      table.add(
          new ProcedureTable.Row(
              List.of(
                  Integer.toString(cuts.row(cut) + 1),
                  cut.station().segment().name(),
                  state(cut).name()),
              Inputs.of(procedure, inputs.apply(cut))));
    }
    tables.add(
        sheet.add(
            new ProcedureTable(
                procedure.procedure().title(),
                procedure,
                List.of(
                    new ProcedureTable.Label("cut", 12),
                    new ProcedureTable.Label("segment", 22),
                    new ProcedureTable.Label("state", 50)),
                table)));
  }

  private StateSolved state(Cut cut) {
    return cuts.state(cut).orElseThrow();
  }

  /** Whether a cut is one of a state. */
  boolean covers(Cut cut) {
    return rows.containsKey(cut.key());
  }

  /** An end force, load or load moment of the deflection at rest. */
  InputCell atRest(Cut cut, String symbol) {
    return AT_REST.contains(symbol)
        ? InputCell.shown(tables.get(0).number(row(cut), symbol))
        : ofState(cut, symbol);
  }

  private int row(Cut cut) {
    return Required.of(rows.get(cut.key()), "A cut of a state");
  }

  private InputCell ofState(Cut cut, String symbol) {
    Segment segment = cut.station().segment();
    if (symbol.equals("x")) {
      return InputCell.shown(cuts.place(cut));
    } else if (symbol.equals("L")) {
      return InputCell.shown(segments.geometry(segment, symbol));
    } else if (symbol.startsWith("m_")) {
      return InputCell.shown(states.loads().moment(state(cut), segment, symbol));
    } else if (symbol.startsWith("g_")) {
      return cuts.before(cut, symbol, sheet.name());
    } else if (symbol.startsWith("M_") && symbol.length() == 4) {
      return InputCell.shown(states.bars().endForce(state(cut), segment, symbol));
    } else if (symbol.startsWith("M_")) {
      return InputCell.shown(cuts.force(cut, symbol));
    }
    return InputCell.shown(states.bars().stiffness(state(cut), segment, symbol));
  }

  /**
   * Writes what the axial force adds.
   *
   * @param atRest gives a deflection at rest of a cut, d_y or d_z
   */
  void writeBent(Function<Cut, Function<String, NumberAt>> atRest) {
    if (!own.isEmpty()) {
      write(
          BeamColumnDeflection.PROCEDURE.compile(),
          cut ->
              symbol ->
                  symbol.startsWith("d_")
                      ? InputCell.shown(atRest.apply(cut).apply(symbol.substring(0, 3)))
                      : ofState(cut, symbol));
    }
  }

  /** A deflection from the chord, d_y or d_z; after {@link #writeBent}. */
  InputCell bent(Cut cut, String symbol) {
    return InputCell.shown(tables.get(1).number(row(cut), symbol));
  }

  /** The tables in the order of the calculation. */
  List<ProcedureCells> tables() {
    return tables;
  }
}
