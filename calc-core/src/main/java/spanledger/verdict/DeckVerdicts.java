package spanledger.verdict;

import java.util.List;
import java.util.Optional;
import spanledger.deck.DeckCalculation;
import spanledger.deck.DeckFinding;
import spanledger.procedure.Procedure;

/** Judges decks and treads. */
final class DeckVerdicts {

  private DeckVerdicts() {}

  static List<Verdict> of(List<DeckFinding> findings) {
    return findings.stream().map(DeckVerdicts::verdict).toList();
  }

  private static Verdict verdict(DeckFinding finding) {
    if (finding.result().isEmpty()) {
      return Verdict.notChecked(
          CheckGroup.DECK, finding.check(), finding.use().subject(), finding.remark());
    }
    DeckFinding.Result result = finding.result().get();
    DeckCalculation calculation = result.calculation();
    return new Verdict(
        CheckGroup.DECK,
        finding.check(),
        finding.use().subject(),
        status(result),
        result.demand().map(calculation::value).orElse(result.used()),
        result.capacity().map(calculation::value).orElse(1.0),
        result
            .capacity()
            .map(symbol -> unit(calculation.procedure().procedure(), symbol))
            .orElse(""),
        Optional.empty(),
        finding.remark());
  }

  private static Status status(DeckFinding.Result result) {
    if (result.used() <= 1) {
      return result.proves() ? Status.PASSED : Status.NOT_CHECKED;
    }
    return result.refutes() ? Status.FAILED : Status.NOT_CHECKED;
  }

  private static String unit(Procedure procedure, String symbol) {
    return procedure.symbol(symbol).dimension().coreUnit();
  }
}
