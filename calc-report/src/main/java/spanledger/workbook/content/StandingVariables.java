package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import spanledger.action.RuleSet;
import spanledger.overturning.FloorWeight;
import spanledger.overturning.LineWeight;
import spanledger.overturning.PlacedForce;
import spanledger.overturning.StandingResult;
import spanledger.overturning.TippingCase;
import spanledger.overturning.VariableLoad;
import spanledger.procedure.Procedure;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;

/** The variable loads that tip about each line under each rule, where they are worst. */
final class StandingVariables {

  private static final Source RULES =
      Source.declared("load of the rule set or of the job where it is worst, found by search");
  private static final Source NO_SWAY = Source.derived("0: the rule has no notional sway");
  private static final String FACTORED = "γM";

  private final LedgerSheet sheet;
  private final StandingLines lines;
  private final StandingResult result;
  private final FigureSheet figures;
  private final Map<Integer, NumberAt> moments = new HashMap<>();
  private final List<RangeSums> byCase = new ArrayList<>();

  /** A load of a case: which case, and which load. */
  private record Part(int number, TippingCase of, VariableLoad load) {}

  StandingVariables(
      LedgerSheet sheet,
      StandingLines lines,
      StandingFactors factors,
      StandingResult result,
      FigureSheet figures) {
    this.sheet = sheet;
    this.lines = lines;
    this.result = result;
    this.figures = figures;
    List<Part> parts = new ArrayList<>();
    for (TippingCase one : result.tipping()) {
      byCase.add(new RangeSums(sheet.name()));
      for (VariableLoad load : one.variable()) {
        parts.add(new Part(parts.size(), one, load));
      }
    }
    write("Floor loads beside each line", FloorWeight.PROCEDURE, "M_out", parts, FloorWeight.class);
    write(
        "Loads along lines and at places", LineWeight.PROCEDURE, "M_out", parts, LineWeight.class);
    write("Forces about each line", PlacedForce.PROCEDURE, "M", parts, PlacedForce.class);
    if (!parts.isEmpty()) {
      writeFactored(parts, factors);
    }
  }

  private void write(
      String title, Procedure procedure, String moment, List<Part> parts, Class<?> kind) {
    List<StandingLines.Row> rows = new ArrayList<>();
    List<Part> own = parts.stream().filter(p -> kind.isInstance(p.load().acting())).toList();
    for (Part part : own) {
      rows.add(
          new StandingLines.Row(
              result.edges().indexOf(part.of().edge()),
              List.of(part.of().rule().name(), part.load().acting().name()),
              inputs(part)));
    }
    if (rows.isEmpty()) {
      return;
    }
    ProcedureCells cells = lines.table(title, procedure, List.of("rule", "load"), rows);
    for (int i = 0; i < own.size(); i++) {
      moments.put(own.get(i).number(), cells.number(i, moment));
    }
  }

  private List<InputCell> inputs(Part part) {
    if (part.load().acting() instanceof FloorWeight floor) {
      return lines.inputs(
          floor,
          InputCell.shown(figures.number(RuleSet.FLOOR_AREA)),
          sway(part.load().sway(), figures));
    }
    return part.load().acting() instanceof LineWeight line
        ? StandingLines.inputs(line, InputCell.literal(line.weight(), RULES))
        : StandingLines.inputs((PlacedForce) part.load().acting(), RULES);
  }

  /** The notional level force per weight, or none. */
  static InputCell sway(double sway, FigureSheet figures) {
    return sway == 0
        ? InputCell.literal(0, NO_SWAY)
        : InputCell.shown(figures.number(RuleSet.NOTIONAL_SWAY));
  }

  private void writeFactored(List<Part> parts, StandingFactors factors) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (Part part : parts) {
      NumberAt moment =
          Required.of(moments.get(part.number()), "The moment of " + part.load().acting().name());
      NumberAt factor = factors.variable(part.of().rule(), part.load().factor());
      double tips = Math.max(0, moment.value());
      rows.add(
          List.of(
              LedgerCell.text(part.of().edge().name()),
              LedgerCell.text(part.of().rule().name()),
              LedgerCell.text(part.load().acting().name()),
              LedgerCell.live("MAX(0," + moment.from(sheet.name()) + ")", tips),
              LedgerCell.linked(factor),
              LedgerCell.live("{M}*{γ}", tips * factor.value())));
    }
    DataCells cells =
        sheet.add(
            new DataTable(
                "Variable loads with their factors",
                List.of(
                    Column.wrapped("line", 14),
                    Column.wrapped("rule", 14),
                    Column.text("load", 28),
                    Column.number("M", "tips", Dimension.MOMENT),
                    Column.number("γ", "factor", Dimension.NONE),
                    Column.number(FACTORED, "with its factor", Dimension.MOMENT)),
                rows));
    int row = 0;
    for (int i = 0; i < byCase.size(); i++) {
      int own = result.tipping().get(i).variable().size();
      byCase.get(i).plus(cells, row, own, FACTORED);
      row += own;
    }
  }

  /** All variable loads of a case with their factors. */
  RangeSums sum(int tippingCase) {
    return byCase.get(tippingCase);
  }
}
