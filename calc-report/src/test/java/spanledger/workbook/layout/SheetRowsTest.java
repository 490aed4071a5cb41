package spanledger.workbook.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** Rows as the file holds them: in order whatever the order of writing, and safe for XML. */
class SheetRowsTest {

  private final SheetRows rows = new SheetRows();

  private String written() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    rows.writeTo(out);
    return out.toString(StandardCharsets.UTF_8);
  }

  @Test
  void rowsAndCellsStandInOrderWhateverTheOrderOfWriting() throws IOException {
    rows.number(3, 27, 1, "2.5");
    rows.blank(0, 1, 2);
    rows.words(3, 2, 3, 7);
    rows.height(1, 24.013);

    assertThat(written())
        .isEqualTo(
            "<sheetData><row r=\"1\"><c r=\"B1\" s=\"2\"/></row>"
                + "<row r=\"2\" ht=\"24.0\" customHeight=\"true\"></row>"
                + "<row r=\"4\"><c r=\"C4\" s=\"3\" t=\"s\"><v>7</v></c>"
                + "<c r=\"AB4\" s=\"1\"><v>2.5</v></c></row></sheetData>");
  }

  @Test
  void theLastCellWrittenToAPlaceCounts() throws IOException {
    rows.blank(0, 0, 1);
    rows.number(0, 0, 1, "3.0");

    assertThat(written())
        .isEqualTo("<sheetData><row r=\"1\"><c r=\"A1\" s=\"1\"><v>3.0</v></c></row></sheetData>");
  }

  @Test
  void formulasMayCompareAndJoin() throws IOException {
    rows.textFormula(0, 0, 4, "IF(B1<=1,\"a\"&\"b\",\"c\")", "a & b");

    assertThat(written())
        .contains("<f>IF(B1&lt;=1,\"a\"&amp;\"b\",\"c\")</f><v>a &amp; b</v>")
        .contains(" t=\"str\"");
  }

  @Test
  void numbersCanBeLookedUp() {
    rows.number(5, 3, 0, "-1.25E-7");
    rows.formula(5, 4, 0, "D6*2", "-2.5E-7");
    rows.words(5, 2, 0, 1);

    assertThat(rows.numberAt(5, 3)).isEqualTo(-1.25e-7);
    assertThat(rows.numberAt(5, 4)).isEqualTo(-2.5e-7);
    assertThatThrownBy(() -> rows.numberAt(5, 5)).hasMessageContaining("F6");
  }
}
