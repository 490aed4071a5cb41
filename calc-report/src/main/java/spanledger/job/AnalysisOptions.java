package spanledger.job;

import java.util.List;
import spanledger.action.SwayScope;
import spanledger.behaviour.SecondOrder;

/**
 * How a job is to be analysed.
 *
 * @param secondOrder when loads act on the displaced frame
 * @param bounds the bounds of stiffness that the job is calculated with, one run each
 * @param sway with which combinations notional sway acts
 */
public record AnalysisOptions(
    SecondOrder secondOrder, List<StiffnessBound> bounds, SwayScope sway) {

  /** What a job that says nothing gets. */
  static final AnalysisOptions USUAL =
      new AnalysisOptions(
          SecondOrder.AUTO,
          List.of(StiffnessBound.LOWER, StiffnessBound.UPPER),
          SwayScope.VERTICAL);

  public AnalysisOptions {
    bounds = List.copyOf(bounds);
  }
}
