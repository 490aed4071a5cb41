package spanledger.summary;

import java.util.Locale;
import spanledger.parts.PieceList;

/** The pieces of a structure for other programs: comma-separated, with a heading. */
public final class PiecesCsv {

  private PiecesCsv() {}

  /** The list as text, a line for each kind of piece, ending in a line break. */
  public static String of(PieceList list) {
    StringBuilder text =
        new StringBuilder("section,alloy,role,length_mm,count,mass_each_kg,mass_all_kg,members\n");
    for (PieceList.Piece piece : list.pieces()) {
      text.append(quoted(piece.section().name())).append(',');
      text.append(quoted(piece.alloy().designation())).append(',');
      text.append(quoted(piece.role().words())).append(',');
      text.append(
          String.format(
              Locale.ROOT,
              "%.1f,%d,%.3f,%.3f,",
              piece.length(),
              piece.count(),
              piece.mass(),
              piece.mass() * piece.count()));
      text.append(quoted(String.join(" ", piece.members()))).append('\n');
    }
    return text.toString();
  }

  /**
   * A field as RFC 4180 has it; a leading sign that a spreadsheet takes for a formula is kept off.
   */
  private static String quoted(String field) {
    boolean formula = !field.isEmpty() && "=+-@".indexOf(field.charAt(0)) >= 0;
    String safe = formula ? "'" + field : field;
    return safe.matches("[^,\"\r\n]*") ? safe : "\"" + safe.replace("\"", "\"\"") + "\"";
  }
}
