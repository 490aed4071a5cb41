package spanledger.workbook.content;

import java.util.List;
import java.util.Locale;

/**
 * Solutions of one kind, proved together on sheets of their own.
 *
 * @param what what each is under: a case or a state
 * @param solved in order
 */
record SolvedGroup(String what, List<? extends Solved> solved) {

  static final String CASE = "case";

  SolvedGroup {
    solved = List.copyOf(solved);
  }

  /** The load cases, which are the usual kind. */
  static SolvedGroup cases(KeptCases kept) {
    return new SolvedGroup(CASE, kept.cases());
  }

  /** How wide a column of names has to be, in characters; states are numbered, so it is short. */
  int width() {
    return solved.stream().allMatch(StateSolved.class::isInstance) ? 12 : 34;
  }

  /** The name of one of this kind's sheets, from the usual name. */
  String sheet(String usual) {
    return what.equals(CASE)
        ? usual
        : what.substring(0, 1).toUpperCase(Locale.ROOT)
            + what.substring(1)
            + " "
            + usual.toLowerCase(Locale.ROOT);
  }
}
