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
   * @param sheet number of the sheet, from 1
   * @param numbers the new number of each cell
   */
  static void change(Path in, Path out, int sheet, Map<String, Double> numbers) throws IOException {
    String part = "xl/worksheets/sheet" + sheet + ".xml";
    try (ZipFile from = new ZipFile(in.toFile());
        ZipOutputStream to = new ZipOutputStream(Files.newOutputStream(out))) {
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
