package spanledger.analysis;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import spanledger.action.LoadCase;
import spanledger.frame.Segment;

/** The results of several load cases on one frame. */
public final class FrameSolution {

  private final FrameAnalysis analysis;
  private final List<CaseResult> results;
  private final Map<String, CaseResult> byName;

  FrameSolution(FrameAnalysis analysis, List<CaseResult> results) {
    this.analysis = analysis;
    this.results = List.copyOf(results);
    this.byName =
        results.stream()
            .collect(
                Collectors.toMap(
                    r -> r.loadCase().name(),
                    r -> r,
                    (a, b) -> {
                      throw new IllegalArgumentException(
                          "Two load cases are named " + a.loadCase().name() + ".");
                    }));
  }

  /** The analysis that gave them. */
  public FrameAnalysis analysis() {
    return analysis;
  }

  /** The results in the order of the cases. */
  public List<CaseResult> results() {
    return results;
  }

  /**
   * What a case does along a segment.
   *
   * @throws IllegalArgumentException if the case was not solved
   */
  public SegmentResponse response(Segment segment, LoadCase loadCase) {
    return result(loadCase).response(segment);
  }

  /**
   * The result of a case, found by its name.
   *
   * @throws IllegalArgumentException if the case was not solved
   */
  public CaseResult result(LoadCase loadCase) {
    CaseResult result = byName.get(loadCase.name());
    if (result == null) {
      throw new IllegalArgumentException("Case " + loadCase.name() + " was not solved.");
    }
    return result;
  }
}
