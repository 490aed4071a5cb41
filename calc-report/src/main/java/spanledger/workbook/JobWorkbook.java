package spanledger.workbook;

import java.io.IOException;
import java.nio.file.Path;
import spanledger.job.Job;
import spanledger.picture.structure.StructureAlbum;
import spanledger.verdict.Assessment;
import spanledger.workbook.content.JobSheets;
import spanledger.workbook.content.PictureSheet;
import spanledger.workbook.content.PrintSet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.WorkbookIdentity;

/** The workbook of a job: a calculation that proves itself cell by cell. */
public final class JobWorkbook {

  /** Of the digest in page footers: enough to tell files apart by eye. */
  private static final int DIGITS = 16;

  private JobWorkbook() {}

  /**
   * Writes the workbook. A file of that name stays as it is until the new one is complete.
   *
   * @param album pictures to put in; may have none
   * @throws IOException if it cannot be written
   */
  public static void save(Job job, Assessment assessment, StructureAlbum album, Path file)
      throws IOException {
    try (LedgerWorkbook workbook = LedgerWorkbook.of(identity(job))) {
      JobSheets.write(workbook, job, assessment);
      PictureSheet.write(workbook, album);
      PrintSet.choose(workbook);
      workbook.save(file);
    }
  }

  /** The workbook as bytes, with every formula parsed as it is written; slow, for tests. */
  public static byte[] parsed(Job job, Assessment assessment) {
    try (LedgerWorkbook workbook = LedgerWorkbook.parsingFormulas(identity(job))) {
      JobSheets.write(workbook, job, assessment);
      PrintSet.choose(workbook);
      return workbook.toBytes();
    }
  }

  private static WorkbookIdentity identity(Job job) {
    return new WorkbookIdentity(
        job.title().reference(),
        job.title().title(),
        job.title().date(),
        job.sha256().substring(0, DIGITS));
  }
}
