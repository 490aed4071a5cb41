package spanledger.verification.en1999;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import spanledger.procedure.Input;
import spanledger.procedure.Procedure;
import spanledger.procedure.SpreadsheetFormula;
import spanledger.procedure.Step;
import spanledger.resistance.member.CutCheck;
import spanledger.resistance.member.Effect;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.MemberEvaluator;
import spanledger.resistance.member.PreparedMember;
import spanledger.resistance.member.Working;

/** Runs as a sheet of formulas that feed one another, worked out by Apache POI. */
public final class LinkedSheet {

  private final Map<Working, Integer> rows = new HashMap<>();
  private final Map<CutCheck, Integer> checkRows = new HashMap<>();

  private LinkedSheet() {}

  /** Compares every number that Java found, and every link between calculations. */
  public static void agrees(PreparedMember member, double[] effects) throws IOException {
    new LinkedSheet().compare(member, effects);
  }

  /**
   * Compares every number of runs that need no cut, and every link between them.
   *
   * @param workings each after those that feed it
   */
  public static void agrees(List<Working> workings) throws IOException {
    LinkedSheet linked = new LinkedSheet();
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      Sheet sheet = workbook.createSheet();
      sheet.createRow(0);
      workings.forEach(working -> linked.rows.put(working, linked.write(sheet, working)));
      FormulaEvaluator poi = workbook.getCreationHelper().createFormulaEvaluator();
      workings.forEach(working -> compare(sheet, poi, working, linked.row(working)));
    }
  }

  private void compare(PreparedMember member, double[] effects) throws IOException {
    MemberEvaluator evaluator = member.evaluator();
    evaluator.evaluate(effects);
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      Sheet sheet = workbook.createSheet();
      Row atCut = sheet.createRow(0);
      for (Effect effect : Effect.values()) {
        atCut.createCell(effect.ordinal()).setCellValue(effects[effect.ordinal()] + 0.0);
      }
      for (Working working : member.workings()) {
        rows.put(working, write(sheet, working));
      }
      List<Working> checks = evaluator.workings();
      for (int i = 0; i < checks.size(); i++) {
        checkRows.put(member.checks().get(i), write(sheet, checks.get(i)));
      }
      FormulaEvaluator poi = workbook.getCreationHelper().createFormulaEvaluator();
      member.workings().forEach(working -> compare(sheet, poi, working, row(working)));
      for (int i = 0; i < checks.size(); i++) {
        compare(sheet, poi, checks.get(i), checkRow(member.checks().get(i)));
      }
    }
  }

  private int row(Working working) {
    return Objects.requireNonNull(rows.get(working));
  }

  private int checkRow(CutCheck check) {
    return Objects.requireNonNull(checkRows.get(check));
  }

  private int write(Sheet sheet, Working working) {
    int at = sheet.getLastRowNum() + 1;
    Row row = sheet.createRow(at);
    Procedure procedure = working.procedure().procedure();
    for (int i = 0; i < procedure.inputs().size(); i++) {
      Feed feed = working.feeds().get(i);
      Cell cell = row.createCell(i);
      if (feed instanceof Feed.Given value) {
        cell.setCellValue(value.value());
      } else if (feed instanceof Feed.Result result) {
        cell.setCellFormula(
            address(row(result.from()), result.from().procedure().slot(result.symbol())));
      } else if (feed instanceof Feed.AtCut effect) {
        cell.setCellFormula(address(0, effect.effect().ordinal()));
      } else if (feed instanceof Feed.Earlier earlier) {
        cell.setCellFormula(
            address(checkRow(earlier.check()), earlier.check().procedure().slot(earlier.symbol())));
      }
    }
    for (Step step : procedure.steps()) {
      row.createCell(working.procedure().slot(step.symbol().symbol()))
          .setCellFormula(
              SpreadsheetFormula.of(
                  step.expression(), r -> address(at, working.procedure().slot(r.symbol()))));
    }
    return at;
  }

  private static String address(int row, int column) {
    return CellReference.convertNumToColString(column) + (row + 1);
  }

  private static void compare(Sheet sheet, FormulaEvaluator poi, Working working, int at) {
    Procedure procedure = working.procedure().procedure();
    for (Input input : procedure.inputs()) {
      compare(sheet, poi, working, at, input.symbol().symbol());
    }
    for (Step step : procedure.steps()) {
      compare(sheet, poi, working, at, step.symbol().symbol());
    }
  }

  private static void compare(
      Sheet sheet, FormulaEvaluator poi, Working working, int at, String symbol) {
    double expected = working.value(symbol);
    Cell cell = sheet.getRow(at).getCell(working.procedure().slot(symbol));
    assertThat(poi.evaluate(cell).getNumberValue())
        .as(
            "%s, %s, %s; tolerance: rounding through a chain of some hundred formulas",
            working.procedure().procedure().name(), working.label(), symbol)
        .isCloseTo(expected, within(1e-9 * Math.max(1e-3, Math.abs(expected))));
  }
}
