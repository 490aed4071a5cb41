package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import spanledger.frame.Member;
import spanledger.material.BucklingClass;
import spanledger.procedure.CompiledProcedure;
import spanledger.resistance.ElasticStress;
import spanledger.resistance.StressUtilisation;
import spanledger.resistance.WallSlenderness;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.ProcedureTable;

/** Stresses at every cut, against the alloy's strength and the slenderness of the walls. */
final class StrengthSheet {

  private static final List<ProcedureTable.Label> LABELS =
      List.of(
          new ProcedureTable.Label("cut", 6),
          new ProcedureTable.Label("segment", 22),
          new ProcedureTable.Label("section", 14),
          new ProcedureTable.Label("combination", 50));

  private final List<Cut> cuts;
  private final ProcedureCells stress;
  private final ProcedureCells use;
  private final ProcedureCells wall;
  private final CutSheets source;

  private StrengthSheet(
      LedgerWorkbook workbook,
      List<Cut> cuts,
      CutSheets source,
      SectionSheet sections,
      FigureSheet figures) {
    this.cuts = cuts;
    this.source = source;
    LedgerSheet sheet = workbook.sheet(SheetNames.STRENGTH);
    sheet.title(
        "Member strength",
        "Elastic stresses at each cut that governs an effect. A utilisation above 1 fails.");
    boolean oneTable = cuts.stream().map(source::internal).distinct().count() <= 1;
    CompiledProcedure elastic = ElasticStress.PROCEDURE.compile();
    stress =
        add(
            sheet,
            elastic,
            cut ->
                symbol ->
                    isForce(symbol)
                        ? force(source.force(cut, symbol), oneTable)
                        : InputCell.shown(sections.property(member(cut).section(), symbol)));
    CompiledProcedure utilisation = StressUtilisation.PROCEDURE.compile();
    use =
        add(
            sheet,
            utilisation,
            cut ->
                symbol ->
                    switch (symbol) {
                      case "f_o" -> InputCell.shown(sections.alloy(member(cut).alloy(), symbol));
                      case "φ_R", "γ_M" -> InputCell.inline(figures.number(symbol));
                      default -> InputCell.inline(stress.number(rowOf(cut), symbol));
                    });
    wall =
        add(
            sheet,
            WallSlenderness.PROCEDURE.compile(),
            cut -> symbol -> wallInput(cut, symbol, sections, figures));
  }

  static StrengthSheet write(
      LedgerWorkbook workbook,
      List<Cut> cuts,
      CutSheets source,
      SectionSheet sections,
      FigureSheet figures) {
    return new StrengthSheet(workbook, cuts, source, sections, figures);
  }

  /** Forces of cuts from sums and from states stand in tables of their own; both are shown. */
  private static InputCell force(NumberAt number, boolean oneTable) {
    return oneTable ? InputCell.inline(number) : InputCell.shown(number);
  }

  private InputCell wallInput(Cut cut, String symbol, SectionSheet sections, FigureSheet figures) {
    Member member = member(cut);
    String buckling = member.alloy().bucklingClass() == BucklingClass.A ? " A" : " B";
    return switch (symbol) {
      case "σ_N", "σ_My", "σ_Mz" -> InputCell.inline(stress.number(rowOf(cut), symbol));
      case "f_d" -> InputCell.inline(use.number(rowOf(cut), symbol));
      case "f_o" -> InputCell.shown(sections.alloy(member.alloy(), symbol));
      case "β3_int", "β3_out" -> InputCell.shown(figures.number(symbol + buckling));
      default -> InputCell.shown(sections.property(member.section(), symbol));
    };
  }

  private ProcedureCells add(
      LedgerSheet sheet,
      CompiledProcedure procedure,
      java.util.function.Function<Cut, java.util.function.Function<String, InputCell>> inputs) {
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (Cut cut : cuts) {
      rows.add(
          new ProcedureTable.Row(
              List.of(
                  Integer.toString(source.row(cut) + 1),
                  cut.station().segment().name(),
                  member(cut).section().name(),
                  cut.instance().words()),
              Inputs.of(procedure, inputs.apply(cut))));
    }
    return sheet.add(new ProcedureTable(procedure.procedure().title(), procedure, LABELS, rows));
  }

  private static boolean isForce(String symbol) {
    return Map.of("N", 1, "V_y", 1, "V_z", 1, "T", 1, "M_y", 1, "M_z", 1).containsKey(symbol);
  }

  private static Member member(Cut cut) {
    return cut.station().segment().member();
  }

  private int rowOf(Cut cut) {
    for (int i = 0; i < cuts.size(); i++) {
      if (cuts.get(i).key().equals(cut.key())) {
        return i;
      }
    }
    throw new IllegalArgumentException("No stresses are worked out at that cut.");
  }

  /** A utilisation, stress or strength at a cut. */
  NumberAt number(Cut cut, String symbol) {
    int row = rowOf(cut);
    if (symbol.equals("η_wall")) {
      return wall.number(row, symbol);
    }
    return symbol.startsWith("η_") || symbol.endsWith("_d")
        ? use.number(row, symbol)
        : stress.number(row, symbol);
  }

  /** The tables in the order of the calculation. */
  List<ProcedureCells> tables() {
    List<ProcedureCells> tables = new ArrayList<>(source.internal());
    tables.addAll(List.of(stress, use, wall));
    return tables;
  }

  /** The tables that a cut runs through, in order. */
  List<ProcedureCells> tables(Cut cut) {
    return List.of(source.internal(cut), stress, use, wall);
  }

  /** The row of a cut in the tables of stresses. */
  int row(Cut cut) {
    return rowOf(cut);
  }
}
