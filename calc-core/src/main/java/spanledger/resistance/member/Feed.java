package spanledger.resistance.member;

import spanledger.provenance.Source;

/** Where an input of a calculation comes from; a workbook makes a given number or a cell of it. */
public sealed interface Feed permits Feed.Given, Feed.Result, Feed.AtCut, Feed.Earlier {

  /**
   * A number from the section, the alloy, the case or the figures of the code.
   *
   * @param value in core units
   * @param origin what it is a value of, for example {@code section stringer, A}; a workbook may
   *     refer to the cell that holds it
   * @param source where the number comes from
   */
  record Given(double value, String origin, Source source) implements Feed {}

  /** A step, or an input, of an earlier calculation. */
  record Result(Working from, String symbol) implements Feed {
    public Result {
      from.procedure().slot(symbol);
    }
  }

  /** An effect at the cut that is looked at; only in {@link CutCheck}s. */
  record AtCut(Effect effect) implements Feed {}

  /** A step of an earlier check at the same cut; only in {@link CutCheck}s. */
  record Earlier(CutCheck check, String symbol) implements Feed {
    public Earlier {
      check.procedure().slot(symbol);
    }
  }
}
