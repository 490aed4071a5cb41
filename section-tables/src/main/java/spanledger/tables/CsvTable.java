package spanledger.tables;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.text.StringTokenizer;

/**
 * A data file with commas, in the same form as one in JSON: lines {@code # key: value} before the
 * heading are members of the file, each later line is a row.
 *
 * <p>A heading {@code depth [in]} gives every number of its column that unit; {@code forms[]} makes
 * a list of what semicolons separate. Empty cells are left out. Lines {@code ## ...} are remarks.
 */
final class CsvTable {

  private static final Pattern MEMBER = Pattern.compile("#\\s*([\\w.]+)\\s*:\\s*(.*)");
  private static final Pattern UNIT = Pattern.compile("(.*?)\\s*\\[([^\\]]+)]");
  private static final String LIST = "[]";

  private CsvTable() {}

  /**
   * Reads a file.
   *
   * @throws TableFormatException if a row has other cells than the heading, or a unit in it is
   *     unknown; the message names the line
   */
  static ObjectNode read(String name, String text) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    ArrayNode rows = JsonNodeFactory.instance.arrayNode();
    List<String> heading = List.of();
    List<String> lines = text.lines().toList();
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      Matcher member = MEMBER.matcher(line);
      boolean empty = line.isBlank() || line.startsWith("##");
      if (line.startsWith("#") && !empty) {
        if (!heading.isEmpty() || !member.matches()) {
          throw new TableFormatException(
              name
                  + ", line "
                  + (i + 1)
                  + ": lines with # stand before the heading and say \"# key: value\"; remarks begin"
                  + " with ##.");
        }
        put(root, member.group(1), member.group(2).strip());
      } else if (heading.isEmpty() && !empty) {
        heading = cells(line);
        knowUnits(name, i + 1, heading);
      } else if (!empty) {
        rows.add(row(name, i + 1, heading, cells(line)));
      }
    }
    root.set("rows", rows);
    return root;
  }

  /** Reports an unknown unit once, where it stands, and not with every number below it. */
  private static void knowUnits(String name, int line, List<String> heading) {
    List<String> faults = new ArrayList<>();
    for (String head : heading) {
      Matcher unit = UNIT.matcher(head);
      if (unit.matches()) {
        try {
          UnitExpression.parse(unit.group(2));
        } catch (QuantityFormatException e) {
          faults.add(name + ", line " + line + ", column " + head + ": " + e.getMessage());
        }
      }
    }
    if (!faults.isEmpty()) {
      throw new TableFormatException(String.join("\n", faults));
    }
  }

  /** A member; a point in its key leads into an object. */
  private static void put(ObjectNode root, String key, String value) {
    int point = key.indexOf('.');
    if (point < 0) {
      root.put(key, value);
    } else {
      root.withObjectProperty(key.substring(0, point)).put(key.substring(point + 1), value);
    }
  }

  private static List<String> cells(String line) {
    StringTokenizer cells = StringTokenizer.getCSVInstance(line);
    cells.setIgnoreEmptyTokens(false);
    List<String> all = new ArrayList<>();
    cells.forEachRemaining(cell -> all.add(cell == null ? "" : cell.strip()));
    return all;
  }

  private static ObjectNode row(String name, int line, List<String> heading, List<String> cells) {
    if (cells.size() != heading.size()) {
      throw new TableFormatException(
          name
              + ", line "
              + line
              + ": "
              + cells.size()
              + " cells under a heading of "
              + heading.size()
              + ". A cell with a comma stands in quotation marks.");
    }
    ObjectNode row = JsonNodeFactory.instance.objectNode();
    for (int c = 0; c < cells.size(); c++) {
      String head = heading.get(c);
      String cell = cells.get(c);
      Matcher unit = UNIT.matcher(head);
      if (head.endsWith(LIST) && !cell.isEmpty()) {
        ArrayNode list = row.putArray(head.substring(0, head.length() - LIST.length()));
        Pattern.compile(";").splitAsStream(cell).forEach(part -> list.add(part.strip()));
      } else if (!cell.isEmpty()) {
        boolean measured = unit.matches();
        row.put(measured ? unit.group(1) : head, measured ? cell + " " + unit.group(2) : cell);
      }
    }
    return row;
  }
}
