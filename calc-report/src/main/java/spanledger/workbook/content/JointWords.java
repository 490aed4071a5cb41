package spanledger.workbook.content;

import java.util.stream.Stream;
import spanledger.procedure.Input;
import spanledger.procedure.Reference;
import spanledger.procedure.Step;
import spanledger.resistance.member.Working;

/** What a procedure says of its symbols. */
final class JointWords {

  /**
   * What a symbol means.
   *
   * @param words its meaning
   * @param unit the core unit
   */
  record Said(String words, String unit) {}

  private JointWords() {}

  /** What a run's procedure says of an input or step. */
  static Said of(Working working, String symbol) {
    return Stream.concat(
            working.procedure().procedure().inputs().stream().map(JointWords::input),
            working.procedure().procedure().steps().stream().map(JointWords::step))
        .filter(one -> one.symbol().symbol().equals(symbol))
        .map(one -> new Said(one.words(), one.symbol().dimension().coreUnit()))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("There is no symbol " + symbol + "."));
  }

  private record One(Reference symbol, String words) {}

  private static One input(Input input) {
    return new One(input.symbol(), input.words());
  }

  private static One step(Step step) {
    return new One(step.symbol(), step.words());
  }
}
