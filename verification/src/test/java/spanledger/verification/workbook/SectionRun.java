package spanledger.verification.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import spanledger.cli.Main;

/**
 * One run of {@code section} on a test outline.
 *
 * @param file the outline file
 * @param exit the exit code
 * @param out what was printed as result
 * @param err what was printed as message
 */
record SectionRun(Path file, int exit, String out, String err) {

  /** Runs the command on a resource of these tests, with results beside it. */
  static SectionRun of(String name, Path folder, String... options) throws IOException {
    Path file = folder.resolve(name + ".json");
    try (InputStream stream = SectionRun.class.getResourceAsStream(name + ".json")) {
      if (stream == null) {
        throw new IOException("There is no test outline " + name + ".json.");
      }
      Files.write(file, stream.readAllBytes());
    }
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    String[] words = new String[options.length + 2];
    words[0] = "section";
    words[1] = file.toString();
    System.arraycopy(options, 0, words, 2, options.length);
    int exit = Main.run(new PrintWriter(out), new PrintWriter(err), words);
    return new SectionRun(file, exit, out.toString(), err.toString());
  }

  /** A file that the run wrote. */
  Path result(String ending) {
    String name = file.getFileName().toString().replace(".json", "-" + ending);
    return file.resolveSibling(name);
  }

  Path workbook() {
    return result("section.xlsx");
  }
}
