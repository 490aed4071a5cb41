package spanledger.workbook.layout;

import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Domain;
import spanledger.procedure.Input;
import spanledger.procedure.Reference;
import spanledger.procedure.SpreadsheetFormula;
import spanledger.procedure.Step;
import spanledger.procedure.SymbolicText;

/**
 * A procedure written out downwards: symbol, words, formula, value, unit, check; below each step
 * its source and the formula with numbers put in. The numbers as text stand to the right, beyond
 * the printed page.
 */
final class WorkedLines {

  static final int SYMBOL = 0;
  static final int WORDS = 1;
  static final int FORMULA = 2;
  static final int VALUE = 3;
  static final int UNIT = 4;
  static final int CHECK = 5;

  private static final int AS_TEXT = 7;
  private static final int[] WIDTHS = {12, 42, 54, 14, 9, 13, 3, 14};

  private final LedgerSheet sheet;
  private final SheetCells cells;
  private final Styles styles;
  private final CompiledProcedure procedure;
  private final double[] values;
  private final CellAddress[] places;

  /**
   * Lines on a sheet.
   *
   * @param values the results by slot
   */
  WorkedLines(LedgerSheet sheet, CompiledProcedure procedure, double[] values) {
    this.sheet = sheet;
    this.cells = sheet.cells();
    this.styles = sheet.styles();
    this.procedure = procedure;
    this.values = values;
    this.places = new CellAddress[values.length];
  }

  void header(String check) {
    String[] headings = {"symbol", "meaning and source", "formula", "value", "unit", check, ""};
    int row = sheet.take(1);
    for (int column = 0; column < WIDTHS.length; column++) {
      sheet.widen(column, WIDTHS[column]);
      if (column <= CHECK) {
        cells.text(row, column, CellRole.COLUMN_SYMBOL, styles, headings[column]);
      }
    }
    cells.text(row, AS_TEXT, CellRole.CAPTION, styles, "as text");
    sheet.page().printUpTo(CHECK);
    sheet.page().repeatWorkedHeader(row);
  }

  /** The place of a slot's value once its line is written. */
  CellAddress place(int slot) {
    return places[slot];
  }

  /**
   * Writes all but the value of an input's line and returns the row; the caller writes the value.
   *
   * @param origin how the input comes onto the page
   * @param source where it comes from; may be empty
   */
  int input(int slot, Input input, String origin, String source) {
    int row = sheet.take(source.isEmpty() ? 1 : 2);
    boolean free = input.domain().equals(Domain.ANY);
    String allowed = free ? "" : "; must be " + input.domain().words();
    frame(row, source.isEmpty(), slot, input.symbol(), input.words(), origin + allowed);
    if (!free) {
      String at = places[slot].fixed();
      String formula =
          Outcome.formula(inDomain(input.domain(), at), Outcome.IN_RANGE, Outcome.OUT_OF_RANGE);
      judge(row, source.isEmpty(), formula, Outcome.IN_RANGE);
    }
    if (!source.isEmpty()) {
      sourceLine(row + 1, source);
    }
    return row;
  }

  /** Writes a step's lines and returns the row of its value. */
  int step(int slot, Step step, NumberPattern pattern) {
    int row = sheet.take(2);
    frame(row, false, slot, step.symbol(), step.words(), "= " + SymbolicText.of(step.expression()));
    String formula = SpreadsheetFormula.of(step.expression(), r -> placeOf(r).fixed());
    cells.formula(
        row,
        VALUE,
        styles.of(CellRole.UNRULED_NUMBER, pattern),
        FormulaRules.required(formula),
        values[slot]);
    sourceLine(row + 1, SourceText.of(step.source()));
    NumbersFormula.formula(step.expression(), r -> textOf(placeOf(r)).fixed())
        .ifPresent(
            live ->
                cells.formula(
                    row + 1,
                    FORMULA,
                    CellRole.NUMBERS_TEXT,
                    styles,
                    FormulaRules.required(live),
                    NumbersFormula.text(step.expression(), r -> RoundedText.of(values[slot(r)]))));
    return row;
  }

  /** Writes a judgement at the end of a line. */
  void judge(int row, boolean lastLine, String formula, Outcome outcome) {
    cells.formula(
        row,
        CHECK,
        lastLine ? CellRole.OUTCOME : CellRole.UNRULED_OUTCOME,
        styles,
        FormulaRules.required(formula),
        outcome.words());
    sheet.judged(row, row, CHECK);
  }

  private void frame(
      int row, boolean lastLine, int slot, Reference symbol, String words, String formula) {
    places[slot] = sheet.at(row, VALUE);
    cells.text(
        row, SYMBOL, lastLine ? CellRole.SYMBOL : CellRole.UNRULED_SYMBOL, styles, symbol.symbol());
    CellRole text = lastLine ? CellRole.WRAPPED : CellRole.UNRULED_WRAPPED;
    cells.text(row, WORDS, text, styles, words);
    cells.text(row, FORMULA, text, styles, formula);
    CellRole unit = lastLine ? CellRole.UNIT : CellRole.UNRULED_UNIT;
    cells.text(row, UNIT, unit, styles, symbol.dimension().coreUnit());
    cells.blank(row, CHECK, styles.of(text));
    cells.formula(
        row,
        AS_TEXT,
        CellRole.CAPTION,
        styles,
        RoundedText.formula(places[slot].fixed()),
        RoundedText.of(values[slot]));
  }

  private void sourceLine(int row, String source) {
    cells.text(row, WORDS, CellRole.SOURCE, styles, source);
    for (int column : new int[] {SYMBOL, FORMULA, VALUE, UNIT, CHECK}) {
      cells.blank(row, column, styles.of(CellRole.TEXT));
    }
  }

  private CellAddress placeOf(Reference reference) {
    return places[slot(reference)];
  }

  private int slot(Reference reference) {
    return procedure.slot(reference.symbol());
  }

  private static CellAddress textOf(CellAddress value) {
    return value.moved(0, AS_TEXT - VALUE);
  }

  private static String inDomain(Domain domain, String at) {
    String lower =
        Double.isInfinite(domain.least())
            ? ""
            : at + (domain.leastIncluded() ? ">=" : ">") + plain(domain.least());
    String upper = Double.isInfinite(domain.greatest()) ? "" : at + "<=" + plain(domain.greatest());
    return lower.isEmpty() || upper.isEmpty() ? lower + upper : "AND(" + lower + "," + upper + ")";
  }

  private static String plain(double limit) {
    return limit == Math.rint(limit) && Math.abs(limit) < 1e15
        ? Long.toString((long) limit)
        : Double.toString(limit);
  }
}
