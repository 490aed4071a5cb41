package spanledger.workbook;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import spanledger.extrusion.ExtrusionReport;
import spanledger.picture.Lettering;
import spanledger.workbook.content.ExtrusionSheets;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.WorkbookIdentity;

/** The workbook of an extrusion: its properties, worked out in sight of the reader. */
public final class SectionWorkbook {

  /** Outlines have no date of issue, and the clock's would make every file another. */
  private static final LocalDate UNDATED = LocalDate.of(1980, 1, 1);

  private SectionWorkbook() {}

  /**
   * Writes the workbook. A file of that name stays as it is until the new one is complete.
   *
   * @throws IOException if it cannot be written
   */
  public static void save(ExtrusionReport report, Lettering lettering, Path file)
      throws IOException {
    try (LedgerWorkbook workbook = LedgerWorkbook.of(identity(report))) {
      ExtrusionSheets.write(workbook, report, lettering);
      workbook.save(file);
    }
  }

  /** The workbook as bytes, with every formula parsed as it is written; slow, for tests. */
  public static byte[] parsed(ExtrusionReport report, Lettering lettering) {
    try (LedgerWorkbook workbook = LedgerWorkbook.parsingFormulas(identity(report))) {
      ExtrusionSheets.write(workbook, report, lettering);
      return workbook.toBytes();
    }
  }

  private static WorkbookIdentity identity(ExtrusionReport report) {
    return new WorkbookIdentity(
        report.name(), "Section properties of " + report.name(), UNDATED, "");
  }
}
