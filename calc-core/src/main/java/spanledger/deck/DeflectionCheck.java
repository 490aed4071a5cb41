package spanledger.deck;

import java.util.Optional;
import spanledger.action.Figure;
import spanledger.provenance.Source;
import spanledger.resistance.DeflectionUtilisation;

/** Deflections of panels against the limits of the rule set. */
final class DeflectionCheck {

  private static final double MIDDLE = 0.5;

  private final DeckLoads loads;

  DeflectionCheck(DeckLoads loads) {
    this.loads = loads;
  }

  /**
   * Judges a deflection.
   *
   * @param bent a calculation with the step δ
   */
  DeckFinding of(DeckCalculation bent) {
    DeckUse use = bent.use();
    String check = check(bent.load());
    Optional<Figure> ratio = loads.deflectionRatio(use.kind());
    if (ratio.isEmpty()) {
      return DeckFinding.notChecked(
          use, check, "the rule set has no deflection limit for it; add one to \"overrides\"");
    }
    Optional<Figure> most = loads.deflectionMost(use.kind());
    Source held = Source.declared("the supports of a panel are taken as level");
    DeckCalculation judged =
        DeckCalculation.of(
            use,
            bent.load(),
            most.isPresent() ? DeflectionUtilisation.FLOOR : DeflectionUtilisation.FLOOR_BY_RATIO,
            symbol ->
                switch (symbol) {
                  case "δ" -> new DeckInput.OfStep(bent, "δ");
                  case "δ_A", "δ_B" -> new DeckInput.Given(0, held);
                  case "ξ" -> new DeckInput.Given(MIDDLE, Source.declared("middle of the span"));
                  case "L_m" -> new DeckInput.OfStep(bent, "L");
                  case "r_lim" -> new DeckInput.OfFigure(ratio.get().id(), ratio.get().value());
                  default ->
                      new DeckInput.OfFigure(most.orElseThrow().id(), most.orElseThrow().value());
                });
    return new DeckFinding(
        use,
        check,
        Optional.of(
            new DeckFinding.Result(
                judged, Optional.of("δ_rel"), Optional.of("δ_lim"), "η_deflection")),
        use.where());
  }

  static String check(DeckLoad load) {
    return "deflection under " + load.words();
  }
}
