package spanledger.joint.stiffness;

import java.util.List;

/** Thrown for measurements that cannot be a test of a joint. */
public final class BadCurveException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  private final transient List<String> problems;

  BadCurveException(String specimen, List<String> problems) {
    super("Moment-rotation curve " + specimen + " " + String.join("; it ", problems) + ".");
    this.problems = List.copyOf(problems);
  }

  /** All that is wrong, each to complete "the curve ...". */
  public List<String> problems() {
    return problems;
  }
}
