package spanledger.tables;

import java.io.InputStream;
import java.util.List;
import java.util.Map;
import spanledger.bolt.BoltGrade;
import spanledger.bolt.BoltSize;
import spanledger.bolt.BoltTable;
import spanledger.quantity.Dimension;

/** Reads strengths and sizes of bolts from data files. */
public final class BoltTables {

  private static final Map<String, Boolean> YES_NO = Map.of("yes", true, "no", false);

  private BoltTables() {}

  /** All bolts that come with this module. */
  public static BoltTable standard() {
    BoltTable all = BoltTable.EMPTY;
    for (TableObject file : TableFile.shippedIn("bolts")) {
      all = all.with(read(file));
    }
    return all;
  }

  /**
   * Reads a file of strengths or of sizes; its member {@code table} says which.
   *
   * @param name what messages call the file
   * @param content the file, read to its end but not closed
   * @throws TableFormatException if it is neither; the message names the row
   */
  public static BoltTable read(String name, InputStream content) {
    return read(TableFile.read(name, content));
  }

  static BoltTable read(TableObject file) {
    file.allowOnly("table", "title", "work", "place", "confidence", "note", "rows");
    List<TableObject> rows =
        file.rows("rows", "name").stream()
            .map(row -> row.orFrom(file, "work", "place", "confidence", "note"))
            .toList();
    return file.text("table").equals("bolt-grades")
        ? new BoltTable(TableObject.readAll(rows, BoltTables::grade), List.of())
        : new BoltTable(List.of(), TableObject.readAll(rows, BoltTables::size));
  }

  private static BoltGrade grade(TableObject row) {
    row.allowOnly(
        "name",
        "ultimate",
        "proof",
        "stainless",
        "largest",
        "work",
        "place",
        "confidence",
        "proofWork",
        "proofPlace",
        "proofConfidence",
        "note");
    return new BoltGrade(
        row.text("name"),
        row.quantity("ultimate", Dimension.STRESS),
        row.quantity("proof", Dimension.STRESS),
        row.word("stainless", YES_NO),
        row.quantity("largest", Dimension.LENGTH),
        row.source(),
        row.has("proofWork")
            ? row.source("proofWork", "proofPlace", "proofConfidence")
            : row.source(),
        row.optionalText("note").orElse(""));
  }

  private static BoltSize size(TableObject row) {
    row.allowOnly(
        "name",
        "diameter",
        "pitch",
        "stressArea",
        "acrossFlats",
        "headHeight",
        "nutHeight",
        "hole",
        "closeHole",
        "washerDiameter",
        "washerThickness",
        "work",
        "place",
        "confidence",
        "areaWork",
        "areaPlace",
        "areaConfidence",
        "note");
    return new BoltSize(
        row.text("name"),
        row.quantity("diameter", Dimension.LENGTH),
        row.quantity("pitch", Dimension.LENGTH),
        row.quantity("stressArea", Dimension.AREA),
        row.quantity("acrossFlats", Dimension.LENGTH),
        row.quantity("headHeight", Dimension.LENGTH),
        row.quantity("nutHeight", Dimension.LENGTH),
        row.quantity("hole", Dimension.LENGTH),
        row.quantity("closeHole", Dimension.LENGTH),
        row.quantity("washerDiameter", Dimension.LENGTH),
        row.quantity("washerThickness", Dimension.LENGTH),
        row.has("areaWork") ? row.source("areaWork", "areaPlace", "areaConfidence") : row.source(),
        row.source(),
        row.optionalText("note").orElse(""));
  }
}
