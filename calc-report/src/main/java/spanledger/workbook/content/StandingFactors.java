package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import spanledger.action.ActionCategory;
import spanledger.action.EquilibriumRule;
import spanledger.action.Figure;
import spanledger.overturning.StandingResult;
import spanledger.quantity.Dimension;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.NumberAt;

/** The factors of the rules for tipping and sliding. */
final class StandingFactors {

  private static final String FACTOR = "γ";
  private static final String HOLDS = "permanent that holds";
  private static final String TIPS = "permanent that tips or slides";

  private final Map<String, NumberAt> numbers = new HashMap<>();

  StandingFactors(LedgerSheet sheet, StandingResult result) {
    Map<String, EquilibriumRule> rules = new LinkedHashMap<>();
    result.tipping().forEach(one -> rules.putIfAbsent(one.rule().name(), one.rule()));
    result.sliding().forEach(one -> rules.putIfAbsent(one.rule().name(), one.rule()));
    List<List<LedgerCell>> rows = new ArrayList<>();
    List<String> keys = new ArrayList<>();
    for (EquilibriumRule rule : rules.values()) {
      add(rows, keys, rule, HOLDS, rule.holding());
      add(rows, keys, rule, TIPS, rule.overturning());
      new TreeMap<>(rule.factors())
          .forEach((category, figure) -> add(rows, keys, rule, category.words(), figure));
    }
    if (rows.isEmpty()) {
      return;
    }
    DataCells cells =
        sheet.add(
            new DataTable(
                "Factors of the rules",
                List.of(
                    Column.wrapped("rule", 14),
                    Column.wrapped("on", 24),
                    Column.text("factor", 14),
                    Column.number(FACTOR, "", Dimension.NONE),
                    Column.wrapped(DataTable.SOURCE_HEADING, 20),
                    Column.wrapped("confidence", 16),
                    Column.wrapped("rule from", 14)),
                rows));
    for (int i = 0; i < keys.size(); i++) {
      numbers.put(keys.get(i), cells.number(i, FACTOR));
    }
  }

  private static void add(
      List<List<LedgerCell>> rows,
      List<String> keys,
      EquilibriumRule rule,
      String on,
      Figure figure) {
    keys.add(key(rule, on));
    rows.add(
        List.of(
            LedgerCell.text(rule.name()),
            LedgerCell.text(on),
            LedgerCell.text(figure.id()),
            LedgerCell.given(figure.value()),
            LedgerCell.text(figure.source().citation()),
            LedgerCell.text(figure.source().confidence().words()),
            LedgerCell.text(rule.source().citation())));
  }

  private static String key(EquilibriumRule rule, String on) {
    return rule.name() + " / " + on;
  }

  /** The factor on permanent load that holds. */
  NumberAt holding(EquilibriumRule rule) {
    return number(key(rule, HOLDS));
  }

  /** The factor on permanent load that tips or slides. */
  NumberAt overturning(EquilibriumRule rule) {
    return number(key(rule, TIPS));
  }

  /** The factor with which a variable load takes part. */
  NumberAt variable(EquilibriumRule rule, Figure factor) {
    for (Map.Entry<ActionCategory, Figure> one : new TreeMap<>(rule.factors()).entrySet()) {
      if (one.getValue().equals(factor)) {
        return number(key(rule, one.getKey().words()));
      }
    }
    return overturning(rule);
  }

  private NumberAt number(String key) {
    return Required.of(numbers.get(key), "The factor " + key);
  }
}
