package spanledger.workbook.content;

import java.util.Optional;
import spanledger.envelope.Instance;
import spanledger.frame.Freedom;
import spanledger.frame.Support;

/** Reactions of supports under governing combinations: sums over the cases, or of the state. */
record SupportReactions(
    CombinationSheet combinations, BalanceSheet balance, Optional<StateSheets> states) {

  /** The state of a combination, if it was solved as one. */
  Optional<StateSolved> state(Instance instance) {
    return states.flatMap(all -> all.of(instance));
  }

  /** Whether the support holds along a freedom at all. */
  boolean gives(Instance instance, Support support, Freedom freedom) {
    Optional<StateSolved> state = state(instance);
    return state.isPresent()
        ? states.orElseThrow().balance().gives(state.get(), support, freedom)
        : combinations.parts(instance).stream()
            .anyMatch(part -> balance.gives(part.kept(), support, freedom));
  }

  /**
   * A reaction, as the support acts on the structure; nothing is summed up where it has let go.
   *
   * @param sheet the sheet on which the formula stands
   */
  Sums of(String sheet, Instance instance, Support support, Freedom freedom) {
    Sums sum = new Sums(sheet);
    Optional<StateSolved> state = state(instance);
    if (!gives(instance, support, freedom)) {
      return sum;
    }
    if (state.isPresent()) {
      return sum.plus(
          states.orElseThrow().balance().reaction(state.get(), support.node(), freedom));
    }
    for (CombinationSheet.Weighted part : combinations.parts(instance)) {
      sum.plusProduct(part.factor(), balance.reaction(part.kept(), support.node(), freedom));
    }
    return sum;
  }
}
