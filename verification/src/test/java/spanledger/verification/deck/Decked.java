package spanledger.verification.deck;

import java.util.List;
import java.util.Optional;
import spanledger.deck.DeckFinding;
import spanledger.deck.DeckReview;
import spanledger.deck.DeckUse;
import spanledger.deck.Panel;
import spanledger.deck.PanelRow;
import spanledger.deck.PlankPanel;
import spanledger.deck.TestedPanel;
import spanledger.material.ProductForm;
import spanledger.section.Section;
import spanledger.section.SolidRectangle;
import spanledger.tables.AlloyTables;
import spanledger.tables.CombinationTables;
import spanledger.tables.RuleTables;

/** Small decks for these tests. */
final class Decked {

  private Decked() {}

  /** A row without deflections. */
  static PanelRow row(double span, double uniform, double point) {
    return new PanelRow(span, uniform, Optional.of(point), Optional.empty(), Optional.empty());
  }

  /** Allowable loads, tested on 100 mm. */
  static TestedPanel allowable(PanelRow... rows) {
    return tested(true, 1, Optional.empty(), rows);
  }

  static TestedPanel tested(
      boolean allowable, double divisor, Optional<Double> ratio, PanelRow... rows) {
    return new TestedPanel(
        "grating",
        List.of(rows),
        allowable,
        divisor,
        Optional.of(100.0),
        ratio,
        "invented for these tests",
        0,
        Optional.empty());
  }

  /** A solid plank of 6063-T6. */
  static PlankPanel plank(double depth, double width) {
    return new PlankPanel(
        "plank",
        new Section("plank", new SolidRectangle(depth, width)),
        AlloyTables.standard().select("6063-T6", ProductForm.ROD_OR_BAR, depth, depth),
        width,
        "invented for these tests",
        0,
        Optional.empty());
  }

  static DeckUse floor(Panel panel, double span, double finishes) {
    return new DeckUse(
        "floor", panel, DeckUse.Kind.FLOOR, span, "between two bearers", 0, finishes, 0);
  }

  static DeckUse treads(Panel panel, double span, double going) {
    return new DeckUse(
        "treads", panel, DeckUse.Kind.TREADS, span, "between stringers", 0, 0, going);
  }

  /** The findings under EN ISO 14122 and EN 1990. */
  static List<DeckFinding> review(DeckUse use) {
    return review(use, "en-iso-14122");
  }

  static List<DeckFinding> review(DeckUse use, String rules) {
    return DeckReview.of(List.of(use), RuleTables.ruleSet(rules), CombinationTables.set("en-1990"));
  }

  static DeckFinding finding(List<DeckFinding> findings, String check) {
    return findings.stream().filter(f -> f.check().equals(check)).findFirst().orElseThrow();
  }

  static double value(DeckFinding finding, String symbol) {
    return finding.result().orElseThrow().calculation().value(symbol);
  }
}
