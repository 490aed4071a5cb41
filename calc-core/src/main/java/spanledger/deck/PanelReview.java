package spanledger.deck;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import spanledger.action.ActionCategory;
import spanledger.action.CombinationTemplate;
import spanledger.action.Figure;
import spanledger.action.RuleSet;
import spanledger.procedure.Procedure;
import spanledger.provenance.Source;

/** Checks a tested panel where it is used. */
final class PanelReview {

  private static final Source AS_THEY_ARE =
      Source.declared("allowable values are compared with loads without factors");

  private final DeckLoads loads;
  private final DeflectionCheck deflections;
  private final DeckUse use;
  private final TestedPanel panel;
  private final List<DeckFinding> findings = new ArrayList<>();

  PanelReview(DeckLoads loads, DeckUse use, TestedPanel panel) {
    this.loads = loads;
    this.deflections = new DeflectionCheck(loads);
    this.use = use;
    this.panel = panel;
  }

  List<DeckFinding> findings() {
    for (DeckLoad load : DeckLoad.values()) {
      loads.load(use.kind(), load).ifPresent(figure -> check(load, figure));
    }
    return findings;
  }

  private void check(DeckLoad load, Figure figure) {
    String strength = load.words();
    String deflection = DeflectionCheck.check(load);
    Optional<String> outside = outside();
    Optional<String> why = outside.isPresent() ? outside : open(load);
    if (why.isPresent()) {
      findings.add(DeckFinding.notChecked(use, strength, why.get()));
      findings.add(DeckFinding.notChecked(use, deflection, why.get()));
      return;
    }
    Inputs inputs = new Inputs(figure);
    findings.add(
        new DeckFinding(
            use,
            strength,
            Optional.of(
                new DeckFinding.Result(
                    DeckCalculation.of(use, load, strength(load), inputs::of),
                    load == DeckLoad.POINT ? Optional.empty() : Optional.of("q_E"),
                    load == DeckLoad.POINT ? Optional.empty() : Optional.of("q_R"),
                    "η_panel")),
            use.where()));
    boolean known =
        panel.has(PanelColumn.UNIFORM_DEFLECTION)
            && (load != DeckLoad.POINT || panel.has(PanelColumn.POINT_DEFLECTION));
    findings.add(
        known
            ? deflections.of(DeckCalculation.of(use, load, deflection(load), inputs::of))
            : DeckFinding.notChecked(
                use, deflection, "the table of panel " + panel.name() + " says nothing of it"));
  }

  private Optional<String> outside() {
    List<PanelRow> rows = panel.rows();
    return panel.rowBefore(use.span()).isPresent()
        ? Optional.empty()
        : Optional.of(
            String.format(
                Locale.ROOT,
                "the span of %.0f mm (%s) is outside the table of panel %s, from %.0f mm to %.0f"
                    + " mm; nothing is read beyond a table",
                use.span(),
                use.where(),
                panel.name(),
                rows.get(0).span(),
                rows.get(rows.size() - 1).span()));
  }

  private Optional<String> open(DeckLoad load) {
    if (load != DeckLoad.POINT) {
      return Optional.empty();
    }
    if (!panel.has(PanelColumn.POINT)) {
      return Optional.of(
          "the table of panel " + panel.name() + " has no column for a load at one place");
    }
    double tested = panel.patch().orElseThrow();
    Optional<Figure> patch = loads.patch(use.kind());
    if (patch.isEmpty()) {
      return Optional.of(
          String.format(
              Locale.ROOT,
              "panel %s was tested on a patch of %.0f mm, but the rule set does not say on which"
                  + " patch its load stands; give it under \"overrides\" as %s",
              panel.name(),
              tested,
              RuleSet.DECK_POINT_PATCH));
    }
    return patch.get().value() >= tested
        ? Optional.empty()
        : Optional.of(
            String.format(
                Locale.ROOT,
                "panel %s was tested on a patch of %.0f mm, but the load stands on %.0f mm"
                    + " (%s), which is harder on it",
                panel.name(),
                tested,
                patch.get().value(),
                patch.get().id()));
  }

  private static Procedure strength(DeckLoad load) {
    return switch (load) {
      case AREA -> PanelProcedures.AREA;
      case POINT -> PanelProcedures.POINT;
      case LINE -> PanelProcedures.LINE;
    };
  }

  private static Procedure deflection(DeckLoad load) {
    return switch (load) {
      case AREA -> PanelProcedures.AREA_DEFLECTION;
      case POINT -> PanelProcedures.POINT_DEFLECTION;
      case LINE -> PanelProcedures.LINE_DEFLECTION;
    };
  }

  /** Where each input of the procedures comes from. */
  private final class Inputs {
    private final Figure load;

    Inputs(Figure load) {
      this.load = load;
    }

    DeckInput of(String symbol) {
      return switch (symbol) {
        case "L" -> new DeckInput.OfUse(use, UseSize.SPAN);
        case "g" -> new DeckInput.OfUse(use, UseSize.WEIGHT);
        case "b" -> new DeckInput.OfUse(use, UseSize.GOING);
        case "q_k", "P_k", "p_k" -> new DeckInput.OfFigure(load.id(), load.value());
        case "γ_G" -> factor(ActionCategory.PERMANENT);
        case "γ_Q" -> factor(ActionCategory.IMPOSED);
        case "γ_M" ->
            new DeckInput.Given(
                panel.divisor(),
                panel.allowable() ? AS_THEY_ARE : Source.declared(panel.reference()));
        default -> table(symbol);
      };
    }

    private DeckInput factor(ActionCategory category) {
      if (panel.allowable()) {
        return new DeckInput.Given(1, AS_THEY_ARE);
      }
      CombinationTemplate template = loads.worst(use.finishes(), load.value());
      return new DeckInput.OfCombination(template, category);
    }

    private DeckInput table(String symbol) {
      boolean after = symbol.endsWith("_2");
      int before = panel.rowBefore(use.span()).orElseThrow();
      for (PanelColumn column : PanelColumn.values()) {
        if (symbol.equals(column.symbol() + (after ? "_2" : "_1"))) {
          return new DeckInput.OfTable(
              use, column, after, panel.value(after ? before + 1 : before, column).orElseThrow());
        }
      }
      throw new IllegalArgumentException("No table has a column " + symbol + ".");
    }
  }
}
