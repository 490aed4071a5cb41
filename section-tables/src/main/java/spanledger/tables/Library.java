package spanledger.tables;

import java.io.InputStream;
import java.util.List;
import spanledger.bolt.BoltTable;
import spanledger.material.AlloyTable;
import spanledger.section.CatalogueSection;

/**
 * What a data file of the user's adds to the shipped tables.
 *
 * @param sections its sections
 * @param alloys its alloys
 * @param bolts its bolts
 * @param rules its rule sets
 */
public record Library(
    List<CatalogueSection> sections, AlloyTable alloys, BoltTable bolts, List<OwnRules> rules) {

  private static final List<String> TABLES =
      List.of("sections", "alloys", "bolt-grades", "bolt-sizes", "rule-set");

  public Library {
    sections = List.copyOf(sections);
    rules = List.copyOf(rules);
  }

  /** One without rule sets. */
  public Library(List<CatalogueSection> sections, AlloyTable alloys, BoltTable bolts) {
    this(sections, alloys, bolts, List.of());
  }

  /**
   * Reads a file of sections, alloys, bolts or a rule set; its member {@code table} says which.
   *
   * @param name what messages call the file; if it ends in {@code .csv}, the file has commas, else
   *     it is JSON
   * @param content the file, read to its end but not closed
   * @throws TableFormatException if it is none of them; the message names the row
   */
  public static Library read(String name, InputStream content) {
    TableObject file = TableFile.read(name, content);
    AlloyTable noAlloys = new AlloyTable(List.of());
    String table = file.optionalText("table").orElse("");
    return switch (table) {
      case "sections" -> new Library(SectionTables.read(file), noAlloys, BoltTable.EMPTY);
      case "alloys" -> new Library(List.of(), AlloyTables.read(file), BoltTable.EMPTY);
      case "bolt-grades", "bolt-sizes" -> new Library(List.of(), noAlloys, BoltTables.read(file));
      case "rule-set" ->
          new Library(List.of(), noAlloys, BoltTable.EMPTY, List.of(RuleTables.own(name, file)));
      default ->
          throw file.fault(
              "\"table\" is missing or unknown; it says what the rows are: "
                  + String.join(", ", TABLES)
                  + ".");
    };
  }
}
