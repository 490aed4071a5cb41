package spanledger.workbook.layout;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * A workbook being written: sheets in the order in which they are asked for unless moved, defined
 * names, and the file.
 */
public final class LedgerWorkbook implements AutoCloseable {

  private final WorkbookIdentity identity;
  private final boolean parsing;
  private final XSSFWorkbook workbook = new XSSFWorkbook();
  private final Styles styles = new Styles(workbook);
  private final SharedWords words = new SharedWords(workbook);
  private final DefinedNames names = new DefinedNames();
  private final Map<String, LedgerSheet> sheets = new LinkedHashMap<>();
  private boolean finished;

  private LedgerWorkbook(WorkbookIdentity identity, boolean parsing) {
    this.identity = identity;
    this.parsing = parsing;
    // Whoever opens the file sees results of their own program, not of this one.
    workbook.setForceFormulaRecalculation(true);
    DeterministicPackage.describe(workbook, identity);
  }

  /** A new, empty workbook. */
  public static LedgerWorkbook of(WorkbookIdentity identity) {
    return new LedgerWorkbook(identity, false);
  }

  /**
   * A workbook that parses every formula as it is written and so refuses a wrong one at once; for
   * tests, as it is slow. The file is the same.
   */
  public static LedgerWorkbook parsingFormulas(WorkbookIdentity identity) {
    return new LedgerWorkbook(identity, true);
  }

  /**
   * Adds a sheet after the others.
   *
   * @param name at most 31 characters, another than those of all other sheets
   */
  public LedgerSheet sheet(String name) {
    String key = SheetName.required(name).toLowerCase(Locale.ROOT);
    if (sheets.containsKey(key)) {
      throw new IllegalArgumentException("The workbook has a sheet " + name + " already.");
    }
    LedgerSheet sheet = new LedgerSheet(workbook.createSheet(name), styles, words, parsing);
    sheets.put(key, sheet);
    return sheet;
  }

  /** A name for a sheet that holds words of the job: what no sheet name may have is left out. */
  public static String nameOfSheet(String words) {
    return SheetName.from(words);
  }

  /** All sheets, in the order in which they were added. */
  public List<LedgerSheet> sheets() {
    return List.copyOf(sheets.values());
  }

  /**
   * Moves a sheet that had to be written late, because it refers to others, to where a reader looks
   * for it.
   *
   * @param name of a sheet
   * @param before it comes directly after this sheet
   * @throws IllegalArgumentException if the workbook lacks one of them
   */
  public void moveBehind(String name, String before) {
    int from = index(name);
    int to = index(before);
    workbook.setSheetOrder(name, from > to ? to + 1 : to);
  }

  /**
   * Moves a sheet that had to be written late to where a reader looks for it.
   *
   * @param name of a sheet
   * @param behind it comes directly before this sheet
   * @throws IllegalArgumentException if the workbook lacks one of them
   */
  public void moveBefore(String name, String behind) {
    int from = index(name);
    int to = index(behind);
    workbook.setSheetOrder(name, from > to ? to : to - 1);
  }

  private int index(String name) {
    int index = workbook.getSheetIndex(name);
    if (index < 0) {
      throw new IllegalArgumentException("The workbook has no sheet " + name + ".");
    }
    return index;
  }

  /**
   * Gives a cell a name.
   *
   * @param name begins with {@code sl_}
   */
  public void name(String name, CellAddress cell) {
    names.add(name, cell.absolute());
  }

  /** Gives a range a name. */
  public void name(String name, CellRange range) {
    names.add(name, range.absolute());
  }

  /** The whole file as bytes. */
  public byte[] toBytes() {
    finish();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 20);
    try {
      new DeterministicPackage(workbook, rows()).write(bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  /**
   * Writes the file. A file of that name stays as it is until the new one is complete.
   *
   * @throws IOException if it cannot be written
   */
  public void save(Path file) throws IOException {
    finish();
    new DeterministicPackage(workbook, rows()).save(file);
  }

  /** The rows of all sheets by the names of their parts of the file. */
  private Map<String, SheetRows> rows() {
    Map<String, SheetRows> rows = new HashMap<>();
    sheets.values().forEach(sheet -> rows.put(sheet.part(), sheet.cells().rows()));
    return rows;
  }

  private void finish() {
    if (finished) {
      return;
    }
    finished = true;
    names.writeTo(workbook);
    sheets.values().forEach(sheet -> sheet.finish(identity));
  }

  @Override
  public void close() {
    try {
      workbook.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
