package spanledger.verification.workbook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** Changes given numbers in the file of a workbook, as someone who wants to deceive would. */
final class Tampering {

  private Tampering() {}

  /**
   * Copies a workbook with other numbers in some cells that hold given numbers.
   *
   * @param sheet name of the sheet
   * @param numbers the new number of each cell
   */
  static void change(Path in, Path out, String sheet, Map<String, Double> numbers)
      throws IOException {
    try (ZipFile from = new ZipFile(in.toFile());
        ZipOutputStream to = new ZipOutputStream(Files.newOutputStream(out))) {
      String part = "xl/worksheets/sheet" + idOf(sheet, from) + ".xml";
      for (ZipEntry entry : List.copyOf(from.stream().toList())) {
        byte[] content = from.getInputStream(entry).readAllBytes();
        to.putNextEntry(new ZipEntry(entry.getName()));
        if (entry.getName().equals(part)) {
          String text = new String(content, StandardCharsets.UTF_8);
          to.write(changed(text, numbers).getBytes(StandardCharsets.UTF_8));
        } else {
          to.write(content);
        }
        to.closeEntry();
      }
    }
  }

  /** Sheets are shown in another order than they were written in; parts are named by their ids. */
  private static String idOf(String sheet, ZipFile workbook) throws IOException {
    byte[] list = workbook.getInputStream(workbook.getEntry("xl/workbook.xml")).readAllBytes();
    Matcher found =
        Pattern.compile("<sheet name=\"" + Pattern.quote(sheet) + "\"[^>]*sheetId=\"([0-9]+)\"")
            .matcher(new String(list, StandardCharsets.UTF_8));
    if (!found.find()) {
      throw new IllegalArgumentException("There is no sheet " + sheet + ".");
    }
    return found.group(1);
  }

  private static String changed(String sheet, Map<String, Double> numbers) {
    StringBuilder text = new StringBuilder();
    Matcher cell =
        Pattern.compile("(<c r=\"([A-Z]+[0-9]+)\"[^>]*><v>)([^<]*)(</v></c>)").matcher(sheet);
    int changes = 0;
    while (cell.find()) {
      Double number = numbers.get(cell.group(2));
      if (number != null) {
        changes++;
        cell.appendReplacement(text, cell.group(1) + number + cell.group(4));
      }
    }
    if (changes != numbers.size()) {
      throw new IllegalArgumentException(
          "Only " + changes + " of these cells hold a given number: " + numbers.keySet());
    }
    return cell.appendTail(text).toString();
  }
}
