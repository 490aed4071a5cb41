package spanledger.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spanledger.extrusion.ExtrusionReport;
import spanledger.picture.Drawing;
import spanledger.picture.Lettering;
import spanledger.picture.SvgFile;
import spanledger.picture.section.SectionAlbum;
import spanledger.workbook.SectionWorkbook;

/** The files that the command for sections writes, named after the outline file or the section. */
final class SectionFiles {

  private final String stem;
  private final Path directory;
  private final Map<Path, Path> besideOf = new LinkedHashMap<>();

  /**
   * Files of a section.
   *
   * @param stem what their names begin with
   */
  SectionFiles(String stem, Path directory) {
    this.stem = stem;
    this.directory = directory;
  }

  /**
   * Writes all files beside their places, then moves them in, so that none is ever half written.
   */
  void write(ExtrusionReport report, String json, Lettering lettering, Progress progress)
      throws IOException {
    Files.createDirectories(directory);
    try {
      text("section.json", json);
      progress.step("drawing");
      for (Map.Entry<String, Drawing> picture :
          SectionAlbum.of(report.study(), report.name(), lettering).entrySet()) {
        text(picture.getKey() + ".svg", SvgFile.of(picture.getValue()));
      }
      if (report.shape().isPresent()) {
        progress.step("writing the workbook");
        SectionWorkbook.save(report, lettering, beside("section.xlsx"));
      }
      for (Map.Entry<Path, Path> each : besideOf.entrySet()) {
        Files.move(
            each.getValue(),
            each.getKey(),
            StandardCopyOption.REPLACE_EXISTING,
            StandardCopyOption.ATOMIC_MOVE);
      }
    } finally {
      for (Path beside : besideOf.values()) {
        Files.deleteIfExists(beside);
      }
    }
  }

  private void text(String ending, String content) throws IOException {
    Files.writeString(beside(ending), content, StandardCharsets.UTF_8);
  }

  private Path beside(String ending) {
    String name = stem + "-" + ending;
    Path beside = directory.resolve("." + name + ".part");
    besideOf.put(directory.resolve(name), beside);
    return beside;
  }

  /** What was written, in order. */
  List<Path> written() {
    return List.copyOf(besideOf.keySet());
  }
}
