package spanledger.workbook.layout;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Puts the addresses of a row's cells where formulas name them by their headings.
 *
 * @param columns of the table
 * @param row in which the formulas stand
 */
record RowPlaceholders(List<Column> columns, int row) {

  private static final Pattern PLACEHOLDER = Pattern.compile("\\{([^{}]+)\\}");

  LedgerCell resolved(LedgerCell cell) {
    if (cell instanceof LedgerCell.Live c && has(c.formula())) {
      return new LedgerCell.Live(resolved(c.formula()), c.value());
    } else if (cell instanceof LedgerCell.Residual c && has(c.formula())) {
      return new LedgerCell.Residual(resolved(c.formula()), c.value());
    } else if (cell instanceof LedgerCell.LiveText c && has(c.formula())) {
      return new LedgerCell.LiveText(resolved(c.formula()), c.words());
    } else if (cell instanceof LedgerCell.LiveJudged c && has(c.formula())) {
      return new LedgerCell.LiveJudged(resolved(c.formula()), c.outcome());
    }
    return cell;
  }

  private static boolean has(String formula) {
    return formula.indexOf('{') >= 0;
  }

  private String resolved(String formula) {
    return PLACEHOLDER
        .matcher(formula)
        .replaceAll(found -> Matcher.quoteReplacement(address(found.group(1), formula)));
  }

  private String address(String heading, String formula) {
    return DataTable.find(columns, heading)
        .map(column -> CellAddress.letters(column) + (row + 1))
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "The formula "
                        + formula
                        + " names the column "
                        + heading
                        + ", there is none."));
  }
}
