package spanledger.workbook.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;

/** Any words come back as the same words and as nothing else. */
class CellTextProperties {

  @Provide
  Arbitrary<String> words() {
    Arbitrary<String> starts =
        Arbitraries.of("", "=", "+", "-", "@", "'", "_x0041_", "_x005F_", "1e5", "TRUE", " ");
    Arbitrary<String> rest = Arbitraries.strings().ascii().withChars("σ·²⚠\t\n").ofMaxLength(12);
    return Combinators.combine(starts, rest).as((start, end) -> start + end);
  }

  @Property(tries = 60)
  void wordsAreReadBack(@ForAll("words") String words) {
    DataTable table =
        new DataTable(
            "", List.of(Column.text("remark", 20)), List.of(List.of(new LedgerCell.Text(words))));
    try (ReadBack back = ReadBack.of(book -> book.sheet("Words").add(table))) {
      XSSFCell cell = back.cell(new CellAddress("Words", 1, 0));
      String expected =
          words
              .replaceAll("[\\x00-\\x08\\x0B\\x0C\\x0E-\\x1F]", "\uFFFD")
              .replace("\r\n", "\n")
              .replace('\r', '\n');
      assertThat(cell.getCellType()).isIn(CellType.STRING, CellType.BLANK);
      assertThat(cell.getStringCellValue()).isEqualTo(expected);
    }
  }
}
