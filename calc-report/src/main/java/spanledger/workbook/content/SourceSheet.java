package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import spanledger.action.Figure;
import spanledger.job.Job;
import spanledger.material.Alloy;
import spanledger.procedure.Procedure;
import spanledger.procedure.Step;
import spanledger.provenance.Confidence;
import spanledger.provenance.Source;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;

/** Every source used in the workbook; those still to be confirmed first. */
final class SourceSheet {

  /**
   * A use of a source.
   *
   * @param where in the workbook
   * @param what rests on it
   */
  record Use(Source source, String where, String what) {}

  private SourceSheet() {}

  static void write(LedgerWorkbook workbook, Job job, List<Procedure> procedures) {
    List<Use> uses = new ArrayList<>();
    for (Figure figure : job.rules().inOrder()) {
      uses.add(new Use(figure.source(), "Figures", figure.id()));
    }
    job.memberDesign()
        .ifPresent(
            design ->
                design
                    .code()
                    .figures()
                    .inOrder()
                    .forEach(f -> uses.add(new Use(f.source(), design.code().id(), f.id()))));
    job.combinations()
        .templates()
        .forEach(
            t -> {
              uses.add(new Use(t.source(), "Combinations", t.name()));
              new TreeMap<>(t.factors())
                  .forEach(
                      (category, factor) ->
                          uses.add(
                              new Use(
                                  factor.source(),
                                  "Combinations",
                                  t.name() + ", factor on " + category.words())));
            });
    Set<Alloy> alloys = new LinkedHashSet<>();
    job.frame().members().forEach(m -> alloys.add(m.alloy()));
    alloys.forEach(a -> uses.add(new Use(a.source(), "Alloys", a.designation())));
    write(workbook, procedures, uses);
  }

  /**
   * Writes the sheet.
   *
   * @param procedures whose steps have sources; one that comes twice is listed once
   * @param others what rests on other sources
   */
  static void write(LedgerWorkbook workbook, List<Procedure> procedures, List<Use> others) {
    LedgerSheet sheet = workbook.sheet(SheetNames.SOURCES);
    sheet.title(
        "Sources",
        "Where every formula and figure comes from. Confirm those recalled from memory against the"
            + " standard before relying on them.");
    List<Use> uses = new ArrayList<>();
    Set<String> seen = new LinkedHashSet<>();
    for (Procedure procedure : procedures) {
      if (seen.add(procedure.name())) {
        for (Step step : procedure.steps()) {
          uses.add(
              new Use(
                  step.source(), procedure.title(), step.symbol().symbol() + ", " + step.words()));
        }
      }
    }
    uses.addAll(others);
    write(sheet, "To be confirmed", uses, true);
    sheet.printUpToHere();
    write(sheet, "Others", uses, false);
  }

  private static void write(LedgerSheet sheet, String title, List<Use> uses, boolean fromMemory) {
    record Key(String where, Source source) {}
    Map<Key, List<String>> resting = new LinkedHashMap<>();
    for (Use use : uses) {
      if ((use.source().confidence() == Confidence.FROM_MEMORY) == fromMemory) {
        resting
            .computeIfAbsent(new Key(use.where(), use.source()), k -> new ArrayList<>())
            .add(use.what());
      }
    }
    List<List<LedgerCell>> rows = new ArrayList<>();
    resting.forEach(
        (key, what) ->
            rows.add(
                List.of(
                    LedgerCell.text(key.where()),
                    LedgerCell.text(String.join("; ", what)),
                    LedgerCell.text(key.source().citation()),
                    LedgerCell.text(key.source().confidence().words()))));
    sheet.add(
        new DataTable(
            title,
            List.of(
                Column.wrapped("where", 32),
                Column.wrapped("formulas or figures", 60),
                Column.wrapped("source", 44),
                Column.wrapped("confidence", 24)),
            rows));
  }
}
