package spanledger.tables;

import java.io.InputStream;
import java.util.List;
import java.util.stream.Collectors;
import spanledger.joint.stiffness.BadCurveException;
import spanledger.joint.stiffness.MomentRotationCurve;
import spanledger.joint.stiffness.MomentRotationCurve.Point;
import spanledger.quantity.Dimension;

/** Reads what one specimen of a joint did in a test: a moment and a rotation in each row. */
public final class MomentCurveTables {

  /** What the file says of itself in its member {@code table}. */
  public static final String KIND = "moment-rotation";

  private MomentCurveTables() {}

  /**
   * Reads the readings of a specimen.
   *
   * @param file what messages call the file; if it ends in {@code .csv}, the file has commas, else
   *     it is JSON
   * @param content the file, read to its end but not closed
   * @throws TableFormatException if it is no such table, or its readings cannot be a test of a
   *     joint; the message has a line for each fault
   */
  public static MomentRotationCurve read(String file, InputStream content) {
    TableObject table = TableFile.read(file, content);
    if (!table.optionalText("table").orElse("").equals(KIND)) {
      throw table.fault(
          "\"table\" is missing or not \""
              + KIND
              + "\": test curves begin with a line # table: "
              + KIND
              + ".");
    }
    table.allowOnly("table", "specimen", "note", "rows");
    String specimen = table.text("specimen");
    List<Point> points =
        TableObject.readAll(table.rows("rows", "rotation"), MomentCurveTables::point);
    try {
      return new MomentRotationCurve(specimen, points);
    } catch (BadCurveException e) {
      throw new TableFormatException(
          e.problems().stream()
              .map(
                  problem -> table.fault("specimen " + specimen + " " + problem + ".").getMessage())
              .collect(Collectors.joining("\n")));
    }
  }

  private static Point point(TableObject row) {
    row.allowOnly("rotation", "moment");
    return new Point(
        row.quantity("rotation", Dimension.NONE), row.quantity("moment", Dimension.MOMENT));
  }
}
