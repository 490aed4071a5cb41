package spanledger.workbook.layout;

import java.util.HashMap;
import java.util.Map;
import org.apache.poi.xssf.model.SharedStringsTable;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The words of all cells of a workbook, each kept once. */
final class SharedWords {

  private final SharedStringsTable table;
  private final Map<String, Integer> indices = new HashMap<>();

  SharedWords(XSSFWorkbook workbook) {
    this.table = workbook.getSharedStringSource();
  }

  /** The place of the words in the table. */
  int index(String words) {
    Integer known = indices.get(words);
    if (known == null) {
      known = table.addSharedStringItem(new XSSFRichTextString(CellText.encoded(words)));
      indices.put(words, known);
    }
    return known;
  }
}
