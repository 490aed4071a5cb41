package spanledger.section.outline;

import java.util.List;
import java.util.stream.Collectors;

/** The edges given do not bound a section; the message names every place. */
public final class InvalidOutlineException extends IllegalArgumentException {

  private final transient List<OutlineFault> faults;

  public InvalidOutlineException(List<OutlineFault> faults) {
    super(faults.stream().map(OutlineFault::toString).collect(Collectors.joining("\n")));
    this.faults = List.copyOf(faults);
  }

  /** Each fault with its place. */
  public List<OutlineFault> faults() {
    return faults;
  }
}
