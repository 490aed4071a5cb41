package spanledger.tables;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import spanledger.resistance.joint.ContactAdvice;
import spanledger.resistance.joint.ContactMetal;
import spanledger.resistance.joint.ContactTable;
import spanledger.resistance.joint.Surroundings;

/** Reads advice on metals that touch from data files. */
public final class ContactTables {

  private static final Map<String, ContactMetal> METALS =
      Map.of(
          "aluminium", ContactMetal.ALUMINIUM,
          "stainless steel", ContactMetal.STAINLESS_STEEL,
          "zinc-coated steel", ContactMetal.ZINC_COATED_STEEL,
          "bare steel", ContactMetal.BARE_STEEL,
          "copper alloy", ContactMetal.COPPER_ALLOY);

  /** What surrounds a joint, by the words of the data and of job files. */
  public static final Map<String, Surroundings> SURROUNDINGS =
      Map.of(
          "dry indoor", Surroundings.DRY_INDOOR,
          "wet indoor", Surroundings.WET_INDOOR,
          "outdoor", Surroundings.OUTDOOR,
          "marine", Surroundings.MARINE);

  private ContactTables() {}

  /** All advice that comes with this module. */
  public static ContactTable standard() {
    List<ContactAdvice> rows = new ArrayList<>();
    TableFile.shippedIn("contacts").forEach(file -> rows.addAll(read(file).rows()));
    return new ContactTable(rows);
  }

  /**
   * Reads a file of advice.
   *
   * @param name what messages call the file
   * @param content the file, read to its end but not closed
   * @throws TableFormatException if it is not a file of advice; the message names the row
   */
  public static ContactTable read(String name, InputStream content) {
    return read(TableFile.read(name, content));
  }

  private static ContactTable read(TableObject file) {
    file.allowOnly("title", "rows");
    return new ContactTable(TableObject.readAll(file.rows("rows", "id"), ContactTables::advice));
  }

  private static ContactAdvice advice(TableObject row) {
    row.allowOnly("id", "metal", "other", "surroundings", "advice", "work", "place", "confidence");
    return new ContactAdvice(
        row.word("metal", METALS),
        row.word("other", METALS),
        row.word("surroundings", SURROUNDINGS),
        row.text("advice"),
        row.source());
  }
}
