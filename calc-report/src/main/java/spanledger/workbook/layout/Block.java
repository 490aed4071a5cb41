package spanledger.workbook.layout;

/**
 * A part of a sheet. Blocks follow each other downwards.
 *
 * @param <R> what later formulas need to know about it: where its numbers stand
 */
public sealed interface Block<R>
    permits DataTable,
        EntryList,
        ProcedureTable,
        WorkedPage,
        Choice,
        Calculation,
        Legend,
        SignOff,
        Caution {

  /** Writes the block below what the sheet has already; called by {@link LedgerSheet#add}. */
  R writeTo(LedgerSheet sheet);
}
