package spanledger.tables;

import java.io.InputStream;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.deck.PanelRow;
import spanledger.deck.TestedPanel;
import spanledger.quantity.Dimension;

/** Reads tables of what tested panels carry. */
public final class PanelTables {

  /** What the file says of itself in its member {@code table}. */
  public static final String KIND = "deck-panel";

  private static final Map<String, Boolean> VALUES =
      Map.of("allowable", true, "characteristic", false);

  private PanelTables() {}

  /**
   * Reads the table of a panel.
   *
   * @param file what messages call the file; if it ends in {@code .csv}, the file has commas, else
   *     it is JSON
   * @param content the file, read to its end but not closed
   * @param panel the name of the panel
   * @param digest the SHA-256 of the file, in hexadecimal, for the reference
   * @param weight for treads, MPa (N/mm²)
   * @param opening the widest opening, mm
   * @throws TableFormatException if it is no such table; the message has a line for each fault
   */
  public static TestedPanel read(
      String file,
      InputStream content,
      String panel,
      String digest,
      double weight,
      Optional<Double> opening) {
    TableObject table = TableFile.read(file, content);
    if (!table.optionalText("table").orElse("").equals(KIND)) {
      throw table.fault(
          "\"table\" is missing or not \""
              + KIND
              + "\": tables of panels begin with a line # table:"
              + " "
              + KIND
              + ".");
    }
    table.allowOnly(
        "table",
        "title",
        "testedBy",
        "work",
        "values",
        "divisor",
        "patch",
        "deflection",
        "note",
        "rows");
    boolean allowable = table.word("values", VALUES);
    Optional<Double> divisor = table.optionalQuantity("divisor", Dimension.NONE);
    if (allowable == divisor.isPresent()) {
      throw table.fault(
          allowable
              ? "\"divisor\" means nothing beside allowable values; remove it."
              : "\"divisor\" is missing; characteristic values are divided by it, 1 if they are"
                  + " design values already.");
    }
    if (divisor.isPresent() && divisor.get() < 1) {
      throw table.fault("\"divisor\" must be 1 or more.");
    }
    List<PanelRow> rows = TableObject.readAll(table.rows("rows", "span"), PanelTables::row);
    String reference =
        "tested by "
            + table.text("testedBy")
            + ": "
            + table.text("work")
            + " ("
            + file
            + ", SHA-256 "
            + digest
            + ")";
    try {
      return new TestedPanel(
          panel,
          rows,
          allowable,
          divisor.orElse(1.0),
          table.optionalQuantity("patch", Dimension.LENGTH),
          ratio(table),
          reference,
          weight,
          opening);
    } catch (IllegalArgumentException e) {
      throw new TableFormatException(
          String.join(
              "\n",
              String.valueOf(e.getMessage())
                  .lines()
                  .map(line -> table.fault(line + ".").getMessage())
                  .toList()));
    }
  }

  private static Optional<Double> ratio(TableObject table) {
    Optional<Double> ratio = table.optionalQuantity("deflection", Dimension.NONE);
    if (ratio.isPresent() && !(ratio.get() > 0 && ratio.get() < 1)) {
      throw table.fault("\"deflection\" must be a part of the span, for example 1/200.");
    }
    return ratio;
  }

  private static PanelRow row(TableObject row) {
    row.allowOnly("span", "uniform", "point", "uniformDeflection", "pointDeflection");
    return new PanelRow(
        positive(row, "span", Dimension.LENGTH).orElseThrow(() -> missing(row, "span")),
        positive(row, "uniform", Dimension.STRESS).orElseThrow(() -> missing(row, "uniform")),
        positive(row, "point", Dimension.FORCE),
        positive(row, "uniformDeflection", Dimension.LENGTH),
        positive(row, "pointDeflection", Dimension.LENGTH));
  }

  private static TableFormatException missing(TableObject row, String name) {
    return row.fault("\"" + name + "\" is missing.");
  }

  private static Optional<Double> positive(TableObject row, String name, Dimension dimension) {
    Optional<Double> read = row.optionalQuantity(name, dimension);
    if (read.isPresent() && read.get() <= 0) {
      throw row.fault("\"" + name + "\" must be more than zero.");
    }
    return read;
  }
}
