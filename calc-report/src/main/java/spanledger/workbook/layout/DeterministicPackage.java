package spanledger.workbook.layout;

import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jspecify.annotations.Nullable;

/**
 * Writes a workbook so that the same content always gives the same bytes. The library writes sheets
 * without rows; the rows are put in on the way.
 */
final class DeterministicPackage {

  private static final String PROGRAM = "Spanledger";

  private final XSSFWorkbook workbook;
  private final Map<String, SheetRows> rows;

  /**
   * A package to be written.
   *
   * @param rows of sheets by the names of their parts
   */
  DeterministicPackage(XSSFWorkbook workbook, Map<String, SheetRows> rows) {
    this.workbook = workbook;
    this.rows = rows;
  }

  /** Pins what the library would take from the clock or from itself. */
  static void describe(XSSFWorkbook workbook, WorkbookIdentity identity) {
    POIXMLProperties properties = workbook.getProperties();
    Optional<Date> date = Optional.of(Date.from(startOf(identity.issued())));
    properties.getCoreProperties().setCreator(PROGRAM);
    properties.getCoreProperties().setLastModifiedByUser(PROGRAM);
    properties.getCoreProperties().setTitle(identity.title());
    properties.getCoreProperties().setSubjectProperty(identity.job());
    properties.getCoreProperties().setCreated(date);
    properties.getCoreProperties().setModified(date);
    properties.getExtendedProperties().setApplication(PROGRAM);
  }

  private static Instant startOf(LocalDate day) {
    return day.atStartOfDay(ZoneOffset.UTC).toInstant();
  }

  /** Writes the package; entries carry one fixed time. */
  void write(OutputStream out) throws IOException {
    workbook.write(new FixedTimes(out, rows));
  }

  /**
   * Writes beside the target and moves it into place, so that a file already there stays whole
   * until its successor is.
   *
   * @throws IOException if it cannot be written; the target is then as it was
   */
  void save(Path target) throws IOException {
    Path whole = target.toAbsolutePath();
    Path beside =
        whole.resolveSibling(
            "." + whole.getFileName() + "." + ProcessHandle.current().pid() + ".part");
    try {
      try (OutputStream out =
          new BufferedOutputStream(
              Files.newOutputStream(
                  beside,
                  StandardOpenOption.CREATE,
                  StandardOpenOption.TRUNCATE_EXISTING,
                  StandardOpenOption.WRITE),
              1 << 16)) {
        write(out);
      }
      moveIntoPlace(beside, whole);
    } finally {
      Files.deleteIfExists(beside);
    }
  }

  private static void moveIntoPlace(Path beside, Path target) throws IOException {
    try {
      Files.move(beside, target, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(beside, target, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** The library writes straight to a zip stream if it is given one, entry by entry. */
  private static final class FixedTimes extends ZipArchiveOutputStream {

    private static final String NO_ROWS = "<sheetData/>";

    /** Zip keeps local time; the same wall clock in every zone gives the same bytes. */
    private static final LocalDateTime WALL_CLOCK = LocalDateTime.of(1980, 2, 1, 0, 0);

    private final long time = WALL_CLOCK.atZone(ZoneId.systemDefault()).toInstant().toEpochMilli();

    private final Map<String, SheetRows> rows;

    /** A sheet that is being written, still without its rows. */
    private @Nullable ByteArrayOutputStream sheet;

    private String part = "";

    FixedTimes(OutputStream out, Map<String, SheetRows> rows) {
      super(out);
      this.rows = rows;
    }

    @Override
    public void putArchiveEntry(ZipArchiveEntry entry) throws IOException {
      entry.setTime(time);
      super.putArchiveEntry(entry);
      part = entry.getName();
      sheet = rows.containsKey(part) ? new ByteArrayOutputStream(1 << 14) : null;
    }

    @Override
    public void write(byte[] bytes, int offset, int length) throws IOException {
      ByteArrayOutputStream held = sheet;
      if (held == null) {
        super.write(bytes, offset, length);
      } else {
        held.write(bytes, offset, length);
      }
    }

    @Override
    public void closeArchiveEntry() throws IOException {
      ByteArrayOutputStream held = sheet;
      SheetRows own = rows.get(part);
      sheet = null;
      if (held != null && own != null) {
        String text = held.toString(StandardCharsets.UTF_8);
        int at = text.indexOf(NO_ROWS);
        if (at < 0) {
          throw new IOException("No place for the rows in " + part);
        }
        write(text.substring(0, at).getBytes(StandardCharsets.UTF_8));
        OutputStream buffered = new BufferedOutputStream(this, 1 << 16);
        own.writeTo(buffered);
        buffered.flush();
        write(text.substring(at + NO_ROWS.length()).getBytes(StandardCharsets.UTF_8));
      }
      super.closeArchiveEntry();
    }
  }
}
