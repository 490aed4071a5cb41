package spanledger.job;

import java.util.List;
import spanledger.behaviour.SecondOrder;

/**
 * How a job is to be analysed.
 *
 * @param secondOrder when loads act on the displaced frame
 * @param bounds the bounds of stiffness that the job is calculated with, one run each
 */
public record AnalysisOptions(SecondOrder secondOrder, List<StiffnessBound> bounds) {

  /** What a job that says nothing gets. */
  static final AnalysisOptions USUAL =
      new AnalysisOptions(SecondOrder.AUTO, List.of(StiffnessBound.LOWER, StiffnessBound.UPPER));

  public AnalysisOptions {
    bounds = List.copyOf(bounds);
  }
}
