package spanledger.tables;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import spanledger.material.TemperStrengths;
import spanledger.material.TemperTable;
import spanledger.material.ThicknessRange;
import spanledger.quantity.Dimension;

/** Reads from data files what the Aluminum Design Manual and AS/NZS 1664.1 ask of tempers. */
public final class TemperTables {

  private TemperTables() {}

  /** All tempers that come with this module, in the order of its files. */
  public static TemperTable standard() {
    List<TemperStrengths> rows = new ArrayList<>();
    TableFile.shippedIn("tempers").forEach(file -> rows.addAll(read(file).rows()));
    return new TemperTable(rows);
  }

  /**
   * Reads a file of tempers.
   *
   * @param name what messages call the file
   * @param content the file, read to its end but not closed
   * @throws TableFormatException if it is not a file of tempers; the message names the row
   */
  public static TemperTable read(String name, InputStream content) {
    return read(TableFile.read(name, content));
  }

  private static TemperTable read(TableObject file) {
    file.allowOnly("title", "rows");
    List<TemperStrengths> rows = new ArrayList<>();
    for (TableObject row : file.rows("rows", "designation")) {
      rows.add(temper(row));
    }
    return new TemperTable(rows);
  }

  private static TemperStrengths temper(TableObject row) {
    row.allowOnly(
        "designation",
        "over",
        "upTo",
        "compressiveYield",
        "aged",
        "tensionCoefficient",
        "compressionCoefficient",
        "weldCompressiveYield",
        "work",
        "place",
        "confidence");
    try {
      return new TemperStrengths(
          row.text("designation"),
          new ThicknessRange(
              row.optionalQuantity("over", Dimension.LENGTH).orElse(0.0),
              row.optionalQuantity("upTo", Dimension.LENGTH).orElse(Double.POSITIVE_INFINITY)),
          row.quantity("compressiveYield", Dimension.STRESS),
          row.flag("aged"),
          row.quantity("tensionCoefficient", Dimension.NONE),
          row.quantity("compressionCoefficient", Dimension.NONE),
          row.optionalQuantity("weldCompressiveYield", Dimension.STRESS)
              .map(OptionalDouble::of)
              .orElse(OptionalDouble.empty()),
          row.source());
    } catch (TableFormatException e) {
      throw e;
    } catch (IllegalArgumentException e) {
      throw row.fault(String.valueOf(e.getMessage()));
    }
  }
}
