package spanledger.job;

import java.util.function.Function;
import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.MemberCode;

/**
 * A member code that a job can ask for.
 *
 * @param figures its figures, before the job replaces any
 * @param code the code with given figures
 */
public record MemberCodeChoice(CodeFigures figures, Function<CodeFigures, MemberCode> code) {

  /** The code with its figures. */
  public MemberCode with(CodeFigures given) {
    return code.apply(given);
  }
}
