package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import spanledger.action.ActionCategory;
import spanledger.action.CombinationTemplate;
import spanledger.action.Figure;
import spanledger.action.RuleSet;
import spanledger.action.SelfWeight;
import spanledger.job.FigureOverride;
import spanledger.job.Job;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.resistance.ResistanceFactors;
import spanledger.resistance.WallLimits;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.NumberAt;

/**
 * The figures of the rule set, the factors of the combinations and a few constants, each with its
 * source.
 */
final class FigureSheet {

  private static final String VALUE = "value";

  private final Map<String, NumberAt> numbers = new HashMap<>();

  private FigureSheet() {}

  static FigureSheet write(LedgerWorkbook workbook, Job job) {
    FigureSheet figures = new FigureSheet();
    LedgerSheet sheet = workbook.sheet(SheetNames.FIGURES);
    sheet.title(
        "Loads, limits and factors",
        "Rule set "
            + job.rules().id()
            + ": "
            + job.rules().title()
            + ". Combination set "
            + job.combinations().id()
            + ": "
            + job.combinations().title()
            + ".");
    sheet.note(
        "Each figure is used by reference from here. Change one and every sheet follows, but the"
            + " places of moving loads and the governing combinations were found with the figures"
            + " issued: run the job again before relying on a changed figure.");
    figures.writeRules(sheet, job);
    figures.writeFactors(sheet, job);
    figures.writeConstants(sheet, job);
    return figures;
  }

  private void writeRules(LedgerSheet sheet, Job job) {
    Map<String, String> replaced = new HashMap<>();
    for (FigureOverride override : job.overrides()) {
      replaced.put(
          override.given().id(),
          override.replaced().map(f -> "in place of " + f.text()).orElse("added by the job"));
    }
    List<Figure> figures = job.rules().inOrder();
    write(
        sheet,
        "Rule set",
        figures,
        figures.stream()
            .map(
                f ->
                    replaced.containsKey(f.id())
                        ? "OVERRIDDEN, " + replaced.get(f.id()) + ". " + f.note()
                        : f.note())
            .toList());
  }

  private void writeFactors(LedgerSheet sheet, Job job) {
    List<Figure> figures = new ArrayList<>();
    for (CombinationTemplate template : job.combinations().templates()) {
      for (Map.Entry<ActionCategory, Figure> factor :
          new TreeMap<>(template.factors()).entrySet()) {
        Figure f = factor.getValue();
        figures.add(
            new Figure(
                factorKey(template, factor.getKey()),
                "factor on "
                    + factor.getKey().words()
                    + " actions, "
                    + template.limitState().words(),
                f.text(),
                f.value(),
                f.dimension(),
                f.source(),
                f.note()));
      }
    }
    write(sheet, "Combination factors", figures, figures.stream().map(Figure::note).toList());
  }

  private static String factorKey(CombinationTemplate template, ActionCategory category) {
    return template.name() + " / " + category.words();
  }

  private void writeConstants(LedgerSheet sheet, Job job) {
    ResistanceFactors factors = ResistanceFactors.of(job.rules());
    Source notGiven = Source.declared("1 because the rule set does not use it");
    List<Figure> figures = new ArrayList<>();
    figures.add(
        constant(
            "g",
            "standard acceleration of free fall",
            SelfWeight.GRAVITY,
            Dimension.FORCE_PER_MASS,
            Source.fromMemory("ISO 80000-3:2019", "item 3-9.2, exact by definition")));
    figures.add(
        constant(
            "φ_R",
            "factor on resistance",
            factors.factor(),
            Dimension.NONE,
            job.rules().find(RuleSet.RESISTANCE_FACTOR).map(Figure::source).orElse(notGiven)));
    figures.add(
        constant(
            "γ_M",
            "divisor of resistance",
            factors.divisor(),
            Dimension.NONE,
            job.rules().find(RuleSet.RESISTANCE_DIVISOR).map(Figure::source).orElse(notGiven)));
    figures.add(limit("β3_int A", "inner walls, class A", WallLimits.CLASS_A.inner()));
    figures.add(limit("β3_out A", "outstands, class A", WallLimits.CLASS_A.outstand()));
    figures.add(limit("β3_int B", "inner walls, class B", WallLimits.CLASS_B.inner()));
    figures.add(limit("β3_out B", "outstands, class B", WallLimits.CLASS_B.outstand()));
    Map<String, String> sameAs = new HashMap<>();
    if (numbers.containsKey(RuleSet.RESISTANCE_FACTOR)) {
      sameAs.put("φ_R", RuleSet.RESISTANCE_FACTOR);
    }
    if (numbers.containsKey(RuleSet.RESISTANCE_DIVISOR)) {
      sameAs.put("γ_M", RuleSet.RESISTANCE_DIVISOR);
    }
    write(
        sheet,
        "Constants and limits",
        figures,
        figures.stream().map(Figure::note).toList(),
        sameAs);
  }

  private static Figure limit(String id, String words, double value) {
    return constant(id, "class 3 limit per ε, " + words, value, Dimension.NONE, WallLimits.SOURCE);
  }

  private static Figure constant(
      String id, String words, double value, Dimension dimension, Source source) {
    return new Figure(id, words, "", value, dimension, source, "");
  }

  private void write(LedgerSheet sheet, String title, List<Figure> figures, List<String> notes) {
    write(sheet, title, figures, notes, Map.of());
  }

  /**
   * Writes a table of figures.
   *
   * @param sameAs figures that are another figure under the symbol of a formula, by id
   */
  private void write(
      LedgerSheet sheet,
      String title,
      List<Figure> figures,
      List<String> notes,
      Map<String, String> sameAs) {
    List<Column> columns =
        List.of(
            Column.text("figure", 34),
            Column.wrapped("what it is", 34),
            Column.text("as given", 12),
            Column.mixed(VALUE, "core units"),
            Column.text("unit", 9),
            Column.wrapped("source", 44),
            Column.text("confidence", 36),
            Column.wrapped("note", 50));
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (int i = 0; i < figures.size(); i++) {
      Figure f = figures.get(i);
      rows.add(
          List.of(
              LedgerCell.text(f.id()),
              LedgerCell.text(f.words()),
              LedgerCell.text(f.text()),
              sameAs.containsKey(f.id())
                  ? LedgerCell.linked(number(sameAs.get(f.id())))
                  : LedgerCell.given(f.value()),
              LedgerCell.text(unit(f)),
              LedgerCell.text(f.source().citation()),
              LedgerCell.text(f.source().confidence().words()),
              LedgerCell.text(notes.get(i))));
    }
    DataCells cells = sheet.add(new DataTable(title, columns, rows));
    for (int i = 0; i < figures.size(); i++) {
      numbers.put(figures.get(i).id(), cells.number(i, VALUE));
    }
  }

  /** Loads per area are not stresses to their readers: 1 kN/m² is 0.001 N/mm². */
  private static String unit(Figure figure) {
    return figure.text().contains("/m2") || figure.text().contains("/m²")
        ? "N/mm²"
        : figure.dimension().coreUnit();
  }

  /** A figure or constant by its id. */
  NumberAt number(String id) {
    NumberAt number = numbers.get(id);
    if (number == null) {
      throw new IllegalArgumentException("There is no figure " + id + " in the workbook.");
    }
    return number;
  }

  /** The factor of a category in a combination rule. */
  NumberAt factor(CombinationTemplate template, ActionCategory category) {
    return number(factorKey(template, category));
  }

  /** The ids of all figures. */
  Set<String> ids() {
    return Collections.unmodifiableSet(new TreeSet<>(numbers.keySet()));
  }
}
