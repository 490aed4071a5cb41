package spanledger.job;

import java.util.List;
import spanledger.action.RuleSet;
import spanledger.assembly.Assembly;
import spanledger.assembly.GeneratedFrame;
import spanledger.geometry.GeometryFinding;
import spanledger.geometry.GeometryReview;

/**
 * The description of a structure and what it made.
 *
 * @param assembly the description
 * @param frame what it made, without what the job adds by hand
 */
public record BuiltAssembly(Assembly assembly, GeneratedFrame frame) {

  /** Its sizes against the limits of a rule set and of its product. */
  public List<GeometryFinding> geometry(RuleSet rules) {
    return GeometryReview.of(assembly, frame, rules);
  }
}
