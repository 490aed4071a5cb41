package spanledger.verification.calc;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The tools that later proofs stand on: results are really taken out, and really worked out. */
class CalcEngineTest {

  @TempDir Path folder;
  private Path wrong;
  private Path stripped;

  /** A workbook whose formula cells all carry wrong results. */
  @BeforeEach
  void workbookWithWrongResults() throws IOException {
    wrong = folder.resolve("wrong results.xlsx");
    stripped = folder.resolve("stripped.xlsx");
    try (XSSFWorkbook workbook = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(wrong)) {
      Row row = workbook.createSheet("Numbers & <words>").createRow(0);
      row.createCell(0).setCellValue(6);
      row.createCell(1).setCellValue(7);
      row.createCell(2).setCellValue("span > 1");
      Cell product = row.createCell(3);
      product.setCellFormula("A1*B1");
      product.setCellValue(-1);
      Cell text = row.createCell(4);
      text.setCellFormula("C1&\" & more\"");
      text.setCellValue("wrong");
      Cell truth = row.createCell(5);
      truth.setCellFormula("A1<B1");
      truth.setCellValue(false);
      Cell error = row.createCell(6);
      error.setCellFormula("A1/(B1-7)");
      error.setCellValue(0);
      workbook.write(out);
    }
  }

  @Test
  void strippingTakesOutResultsAndNothingElse() throws IOException {
    int formulas = CachedValues.strip(wrong, stripped);

    assertThat(formulas).isEqualTo(4);
    String sheet = entry(stripped, "xl/worksheets/sheet1.xml");
    assertThat(sheet)
        .contains("<c r=\"A1\" s=\"0\" t=\"n\"><v>6.0</v></c>")
        .contains("<c r=\"C1\" s=\"0\" t=\"s\"><v>0</v></c>")
        .contains("<c r=\"D1\" s=\"0\"><f>A1*B1</f></c>")
        .contains("<c r=\"E1\" s=\"0\"><f>C1&amp;\" &amp; more\"</f></c>")
        .contains("<c r=\"F1\" s=\"0\"><f>A1&lt;B1</f></c>")
        .contains("<c r=\"G1\" s=\"0\"><f>A1/(B1-7)</f></c>");
    try (ZipFile before = new ZipFile(wrong.toFile())) {
      for (ZipEntry part : before.stream().toList()) {
        if (!part.getName().startsWith("xl/worksheets/")) {
          assertThat(entry(stripped, part.getName())).isEqualTo(entry(wrong, part.getName()));
        }
      }
    }
  }

  @Test
  void theEngineWorksOutWhatWasTakenOut() throws IOException {
    CalcEngine engine = CalcEngine.required();
    CachedValues.strip(wrong, stripped);

    Path recalculated = engine.recalculate(stripped);

    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(recalculated))) {
      Row row = workbook.getSheetAt(0).getRow(0);
      assertThat(row.getCell(3).getNumericCellValue()).isEqualTo(42);
      assertThat(row.getCell(4).getStringCellValue()).isEqualTo("span > 1 & more");
      assertThat(row.getCell(5).getBooleanCellValue()).isTrue();
      assertThat(row.getCell(6).getCachedFormulaResultType()).isEqualTo(CellType.ERROR);
    }
  }

  private static String entry(Path workbook, String name) throws IOException {
    try (ZipFile zip = new ZipFile(workbook.toFile());
        InputStream in = zip.getInputStream(zip.getEntry(name))) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
