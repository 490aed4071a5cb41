package spanledger.material;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Strengths of tempers beside the rows of an {@link AlloyTable}.
 *
 * @param rows in the order of their table
 */
public record TemperTable(List<TemperStrengths> rows) {

  public TemperTable {
    rows = List.copyOf(rows);
  }

  /** The row of an alloy: same designation, same range of thickness. */
  public Optional<TemperStrengths> find(Alloy alloy) {
    return rows.stream()
        .filter(row -> row.designation().equals(alloy.designation()))
        .filter(row -> row.thickness().equals(alloy.thickness()))
        .findFirst();
  }

  /** The designations, each once. */
  public List<String> designations() {
    return rows.stream().map(TemperStrengths::designation).distinct().toList();
  }

  /** This table with rows added. */
  public TemperTable with(List<TemperStrengths> more) {
    List<TemperStrengths> all = new ArrayList<>(more);
    all.addAll(rows);
    return new TemperTable(all);
  }
}
