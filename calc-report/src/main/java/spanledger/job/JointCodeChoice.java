package spanledger.job;

import java.util.function.Function;
import spanledger.resistance.joint.JointCode;
import spanledger.resistance.member.CodeFigures;

/**
 * A joint code that a job can ask for.
 *
 * @param figures its figures, before the job replaces any
 * @param code the code with given figures
 */
public record JointCodeChoice(CodeFigures figures, Function<CodeFigures, JointCode> code) {

  /** The code with its figures. */
  public JointCode with(CodeFigures given) {
    return code.apply(given);
  }
}
