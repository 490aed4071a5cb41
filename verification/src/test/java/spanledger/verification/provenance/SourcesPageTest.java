package spanledger.verification.provenance;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** docs/sources.md lists every figure and formula that is recalled from memory, and no other. */
class SourcesPageTest {

  private static final String BEGIN = "<!-- recalled: begin -->\n\n";
  private static final String END = "\n<!-- recalled: end -->";

  @Test
  void listsEveryFigureRecalledFromMemory() throws IOException {
    Path page = Path.of(System.getProperty("spanledger.root", "..")).resolve("docs/sources.md");
    String text = Files.readString(page);
    int begin = text.indexOf(BEGIN);
    int end = text.indexOf(END);
    assertThat(begin).as("the marks around the lists in " + page).isNotNegative().isLessThan(end);

    String expected = RecalledFigures.markdown();
    Path target = Files.createDirectories(Path.of("target")).resolve("recalled-figures.md");
    Files.writeString(target, expected);
    assertThat(text.substring(begin + BEGIN.length(), end))
        .as(
            "the lists in docs/sources.md; put in their place what is in %s",
            target.toAbsolutePath())
        .isEqualTo(expected);
  }
}
