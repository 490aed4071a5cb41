package spanledger.workbook.layout;

import org.jspecify.annotations.Nullable;

/** Where the values of a written {@link EntryList} stand. */
public final class EntryCells {

  private final EntryList list;
  private final CellAddress first;

  EntryCells(EntryList list, CellAddress first) {
    this.list = list;
    this.first = first;
  }

  /** The value's cell of the line with these words. */
  public CellAddress address(String words) {
    return first.moved(line(words), 0);
  }

  /**
   * The number of the line with these words.
   *
   * @throws IllegalArgumentException if there is no such line or no number on it
   */
  public NumberAt number(String words) {
    int line = line(words);
    @Nullable Double value = LedgerCells.numberOf(list.entries().get(line).cell());
    if (value == null) {
      throw new IllegalArgumentException("There is no number on the line \"" + words + "\".");
    }
    return new NumberAt(first.moved(line, 0), value);
  }

  private int line(String words) {
    for (int i = 0; i < list.entries().size(); i++) {
      if (list.entries().get(i).words().equals(words)) {
        return i;
      }
    }
    throw new IllegalArgumentException(
        "The list \"" + list.title() + "\" has no line \"" + words + "\".");
  }
}
