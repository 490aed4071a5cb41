package spanledger.deck;

import java.util.Optional;

/**
 * What one check of a deck or of treads found.
 *
 * @param use where the panel is used
 * @param check what is checked
 * @param result the calculation that judges it; empty if it is not checked
 * @param remark what to know beside; why it is not checked, if it is not
 */
public record DeckFinding(DeckUse use, String check, Optional<Result> result, String remark) {

  /**
   * Which steps of a calculation judge a check.
   *
   * @param calculation the calculation
   * @param demand the symbol of the effect; empty if only the utilisation says it
   * @param capacity the symbol of what may be borne; empty likewise
   * @param utilisation the symbol of the step that is at most 1 if the check is passed
   * @param proves whether a utilisation of at most 1 is a pass; if not, {@code remark} says why
   * @param refutes whether a utilisation above 1 is a failure; if not, {@code remark} says why
   */
  public record Result(
      DeckCalculation calculation,
      Optional<String> demand,
      Optional<String> capacity,
      String utilisation,
      boolean proves,
      boolean refutes) {

    /** One that decides both ways. */
    Result(
        DeckCalculation calculation,
        Optional<String> demand,
        Optional<String> capacity,
        String utilisation) {
      this(calculation, demand, capacity, utilisation, true, true);
    }

    /** The utilisation. */
    public double used() {
      return calculation.value(utilisation);
    }
  }

  static DeckFinding notChecked(DeckUse use, String check, String why) {
    return new DeckFinding(use, check, Optional.empty(), why);
  }
}
