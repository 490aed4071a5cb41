package spanledger.analysis;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Input;
import spanledger.procedure.Procedure;
import spanledger.procedure.Step;

/** Carries values of one procedure to the inputs of the same symbol in another. */
final class SlotCopy {

  private final int[] from;
  private final int[] to;

  private SlotCopy(int[] from, int[] to) {
    this.from = from;
    this.to = to;
  }

  static SlotCopy between(CompiledProcedure source, CompiledProcedure target) {
    Set<String> known = symbols(source.procedure());
    List<String> shared = new ArrayList<>();
    for (Input input : target.procedure().inputs()) {
      if (known.contains(input.symbol().symbol())) {
        shared.add(input.symbol().symbol());
      }
    }
    return new SlotCopy(
        shared.stream().mapToInt(source::slot).toArray(),
        shared.stream().mapToInt(target::slot).toArray());
  }

  void copy(double[] source, double[] target) {
    copy(source, target, 0);
  }

  /** The same into a procedure whose places begin at {@code at}. */
  void copy(double[] source, double[] target, int at) {
    for (int i = 0; i < from.length; i++) {
      target[at + to[i]] = source[from[i]];
    }
  }

  private static Set<String> symbols(Procedure procedure) {
    Set<String> symbols = new HashSet<>();
    for (Input input : procedure.inputs()) {
      symbols.add(input.symbol().symbol());
    }
    for (Step step : procedure.steps()) {
      symbols.add(step.symbol().symbol());
    }
    return symbols;
  }
}
