package spanledger.workbook.content;

import java.util.Optional;
import spanledger.frame.Freedom;
import spanledger.frame.Restraint;
import spanledger.frame.Support;
import spanledger.workbook.layout.NumberAt;

/** What a support does in a solution. */
interface SupportRule {

  /** Supports that hold both ways, without gaps. */
  SupportRule LINEAR = (solved, support, freedom) -> support.restraint(freedom).engaged();

  /** The hold in effect: fixed, free or a spring. */
  Restraint inEffect(Solved solved, Support support, Freedom freedom);

  /** The gap that closed before the hold bears; empty if there is none. */
  default Optional<NumberAt> gap(Solved solved, Support support, Freedom freedom) {
    return Optional.empty();
  }
}
