package spanledger.tables;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import spanledger.material.Alloy;
import spanledger.material.AlloyTable;
import spanledger.material.BucklingClass;
import spanledger.material.HeatAffectedStrengths;
import spanledger.material.ProductForm;
import spanledger.material.ThicknessRange;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** Reads alloys and tempers from data files. */
public final class AlloyTables {

  private static final Map<String, ProductForm> FORMS =
      Map.of(
          "open profile", ProductForm.OPEN_PROFILE,
          "hollow profile", ProductForm.HOLLOW_PROFILE,
          "tube", ProductForm.TUBE,
          "rod or bar", ProductForm.ROD_OR_BAR);

  private static final Map<String, BucklingClass> CLASSES =
      Map.of("A", BucklingClass.A, "B", BucklingClass.B);

  private AlloyTables() {}

  /** All alloys that come with this module, in the order of its files. */
  public static AlloyTable standard() {
    List<Alloy> alloys = new ArrayList<>();
    TableFile.shippedIn("alloys").forEach(file -> alloys.addAll(read(file).rows()));
    return new AlloyTable(alloys);
  }

  /**
   * Reads a file of alloys.
   *
   * @param name what messages call the file
   * @param content the file, read to its end but not closed
   * @throws TableFormatException if it is not a file of alloys; the message names the row
   */
  public static AlloyTable read(String name, InputStream content) {
    return read(TableFile.read(name, content));
  }

  static AlloyTable read(TableObject file) {
    file.allowOnly("table", "title", "constants", "rows");
    TableObject constants = file.object("constants");
    constants.allowOnly("youngsModulus", "shearModulus", "density", "work", "place", "confidence");
    return new AlloyTable(
        TableObject.readAll(file.rows("rows", "designation"), row -> alloy(row, constants)));
  }

  private static Alloy alloy(TableObject row, TableObject constants) {
    row.allowOnly(
        "designation",
        "forms",
        "over",
        "upTo",
        "proof",
        "ultimate",
        "elongation",
        "bucklingClass",
        "weldProof",
        "weldUltimate",
        "weldWork",
        "weldPlace",
        "weldConfidence",
        "work",
        "place",
        "confidence",
        "note");
    try {
      return new Alloy(
          row.text("designation"),
          new TreeSet<>(row.words("forms", FORMS)),
          new ThicknessRange(
              row.optionalQuantity("over", Dimension.LENGTH).orElse(0.0),
              row.optionalQuantity("upTo", Dimension.LENGTH).orElse(Double.POSITIVE_INFINITY)),
          row.quantity("proof", Dimension.STRESS),
          row.quantity("ultimate", Dimension.STRESS),
          row.word("bucklingClass", CLASSES),
          heatAffected(row),
          row.optionalQuantity("elongation", Dimension.NONE)
              .map(OptionalDouble::of)
              .orElse(OptionalDouble.empty()),
          constants.quantity("youngsModulus", Dimension.STRESS),
          constants.quantity("shearModulus", Dimension.STRESS),
          constants.quantity("density", Dimension.DENSITY),
          row.source(),
          note(row, constants.source()));
    } catch (TableFormatException e) {
      throw e;
    } catch (IllegalArgumentException e) {
      throw row.fault(String.valueOf(e.getMessage()));
    }
  }

  private static Optional<HeatAffectedStrengths> heatAffected(TableObject row) {
    Optional<Double> proof = row.optionalQuantity("weldProof", Dimension.STRESS);
    return proof.map(
        p ->
            new HeatAffectedStrengths(
                p,
                row.quantity("weldUltimate", Dimension.STRESS),
                row.source("weldWork", "weldPlace", "weldConfidence")));
  }

  private static String note(TableObject row, Source constants) {
    String own = row.optionalText("note").map(text -> text + " ").orElse("");
    return own
        + "E, G and density: "
        + constants.citation()
        + " ("
        + constants.confidence().words()
        + ").";
  }
}
