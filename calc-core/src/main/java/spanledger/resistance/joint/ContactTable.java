package spanledger.resistance.joint;

import java.util.List;

/**
 * Advice on metals that touch.
 *
 * @param rows in the order of the data
 */
public record ContactTable(List<ContactAdvice> rows) {

  public ContactTable {
    rows = List.copyOf(rows);
  }

  /** All advice on a pair, whichever is named first; empty if there is none. */
  public List<ContactAdvice> advice(
      ContactMetal metal, ContactMetal other, Surroundings surroundings) {
    return rows.stream()
        .filter(row -> row.surroundings() == surroundings)
        .filter(
            row ->
                (row.metal() == metal && row.other() == other)
                    || (row.metal() == other && row.other() == metal))
        .toList();
  }
}
