package spanledger.tables;

import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import spanledger.action.Figure;
import spanledger.quantity.Dimension;
import spanledger.resistance.member.CodeFigures;

/** Reads the figures of member codes from data files: partial factors, limits, curves. */
public final class MemberRuleTables {

  private static final Map<String, Dimension> DIMENSIONS =
      Map.of(
          "number", Dimension.NONE,
          "length", Dimension.LENGTH,
          "stress", Dimension.STRESS);

  private MemberRuleTables() {}

  /** The figures of all codes that come with this module, in the order of its files. */
  public static List<CodeFigures> all() {
    return TableFile.shippedIn("member-rules").stream().map(MemberRuleTables::read).toList();
  }

  /**
   * The figures of a code.
   *
   * @throws IllegalArgumentException if there is none of that id; the message names those there are
   */
  public static CodeFigures figures(String id) {
    Map<String, CodeFigures> byId = new LinkedHashMap<>();
    all().forEach(figures -> byId.put(figures.id(), figures));
    CodeFigures found = byId.get(id);
    if (found == null) {
      throw new IllegalArgumentException(
          "There is no member code \"" + id + "\"." + TableObject.choices(id, byId.keySet()));
    }
    return found;
  }

  /**
   * Reads the figures of a code.
   *
   * @param name what messages call the file
   * @param content the file, read to its end but not closed
   * @throws TableFormatException if it does not hold such figures; the message names the row
   */
  public static CodeFigures read(String name, InputStream content) {
    return read(TableFile.read(name, content));
  }

  private static CodeFigures read(TableObject file) {
    file.allowOnly("id", "title", "format", "figures");
    Map<String, Figure> figures = new TreeMap<>();
    for (TableObject row : file.rows("figures", "id")) {
      row.allowOnly("id", "words", "dimension", "value", "work", "place", "confidence", "note");
      Figure figure = FigureRow.read(row, row.word("dimension", DIMENSIONS));
      if (figures.put(figure.id(), figure) != null) {
        throw row.fault("this figure is given twice.");
      }
    }
    return new CodeFigures(
        file.text("id"), file.text("title"), figures, file.optionalText("format"));
  }
}
