package spanledger.workbook.layout;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Names of cells. All begin with {@value #PREFIX}, so that none looks like a cell or a function.
 */
final class DefinedNames {

  static final String PREFIX = "sl_";

  private static final Pattern FORM = Pattern.compile(PREFIX + "[A-Za-z][A-Za-z0-9_]{0,60}");

  /** Spreadsheets do not tell capitals apart in names. */
  private final Map<String, String> targets = new TreeMap<>();

  private final Map<String, String> spelling = new TreeMap<>();

  void add(String name, String target) {
    if (!FORM.matcher(name).matches()) {
      throw new IllegalArgumentException(
          "The name \""
              + name
              + "\" must be "
              + PREFIX
              + " followed by a letter, then letters, digits or _, for example sl_gamma_M1.");
    }
    String key = name.toLowerCase(Locale.ROOT);
    if (targets.putIfAbsent(key, target) != null) {
      throw new IllegalArgumentException(
          "The name " + name + " is given twice, for " + targets.get(key) + " and " + target + ".");
    }
    spelling.put(key, name);
  }

  /** Thousands of names that are not in order make some programs slow to open the file. */
  void writeTo(XSSFWorkbook workbook) {
    targets.forEach(
        (key, target) -> {
          XSSFName name = workbook.createName();
          name.setNameName(spelling.get(key));
          name.setRefersToFormula(target);
        });
  }
}
