package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.action.ActionCategory;
import spanledger.action.CombinationTemplate;
import spanledger.envelope.Instance;
import spanledger.quantity.Dimension;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.NumberAt;

/** The governing combinations: which cases, with which factors. */
final class CombinationSheet {

  /**
   * A case in a combination.
   *
   * @param kept the case
   * @param factor its factor, sign included
   */
  record Weighted(KeptCases.Kept kept, NumberAt factor) {}

  private final Map<String, List<Weighted>> byInstance = new HashMap<>();

  private CombinationSheet() {}

  static CombinationSheet write(LedgerWorkbook workbook, KeptCases kept, FigureSheet figures) {
    CombinationSheet combinations = new CombinationSheet();
    LedgerSheet sheet = workbook.sheet(SheetNames.COMBINATIONS);
    sheet.title(
        "Combinations",
        "Every combination that governs an effect, case by case. A moving load stands where it is"
            + " worst for that effect.");
    writeCases(sheet, kept);
    sheet.printUpToHere();
    combinations.writeTerms(sheet, kept, figures);
    return combinations;
  }

  private static void writeCases(LedgerSheet sheet, KeptCases kept) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (KeptCases.Kept one : kept.cases()) {
      rows.add(
          List.of(
              LedgerCell.count(one.number()),
              LedgerCell.text(one.name()),
              LedgerCell.text(one.words())));
    }
    sheet.add(
        new DataTable(
            "Load cases",
            List.of(
                Column.number("no.", "", Dimension.NONE).withWidth(6),
                Column.text("case", 60),
                Column.text("what it is", 60)),
            rows));
  }

  private void writeTerms(LedgerSheet sheet, KeptCases kept, FigureSheet figures) {
    List<Column> columns =
        List.of(
            Column.number("no.", "", Dimension.NONE).withWidth(6),
            Column.text("combination", 60),
            Column.text("case", 60),
            Column.number("factor", "with sign", Dimension.NONE));
    List<List<LedgerCell>> rows = new ArrayList<>();
    List<KeptCases.Part> parts = new ArrayList<>();
    List<String> keys = new ArrayList<>();
    int number = 1;
    for (Instance instance : kept.instances()) {
      for (KeptCases.Part part : kept.parts(instance)) {
        NumberAt factor = factor(figures, instance, part.term());
        boolean negative = part.term().map(t -> t.sign() < 0).orElse(false);
        rows.add(
            List.of(
                LedgerCell.count(number),
                LedgerCell.text(instance.words()),
                LedgerCell.text(part.kept().name()),
                LedgerCell.live(
                    (negative ? "-" : "") + factor.from(sheet.name()),
                    negative ? -factor.value() : factor.value())));
        parts.add(part);
        keys.add(KeptCases.key(instance));
      }
      number++;
    }
    DataCells cells = sheet.add(new DataTable("Governing combinations", columns, rows));
    for (int i = 0; i < rows.size(); i++) {
      byInstance
          .computeIfAbsent(keys.get(i), k -> new ArrayList<>())
          .add(new Weighted(parts.get(i).kept(), cells.number(i, "factor")));
    }
  }

  private static NumberAt factor(
      FigureSheet figures, Instance instance, Optional<spanledger.action.Combination.Term> term) {
    CombinationTemplate template = instance.combination().template();
    ActionCategory category =
        term.map(t -> t.category())
            .orElseGet(() -> instance.combination().moving().orElseThrow().category());
    return figures.factor(template, category);
  }

  /** The cases of a combination with their factors. */
  List<Weighted> parts(Instance instance) {
    return byInstance.getOrDefault(KeptCases.key(instance), List.of());
  }
}
