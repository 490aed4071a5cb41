package spanledger.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import spanledger.action.RuleSet;

/** The data files shown in docs/how-to-add-data.md can be read as they stand. */
class DocumentedExamplesTest {

  private static final Path GUIDE =
      Path.of(System.getProperty("spanledger.root", ".."), "docs", "how-to-add-data.md");

  @Test
  void alloys() throws IOException {
    assertThat(AlloyTables.read("example", example("\"constants\"")).rows()).hasSize(1);
  }

  @Test
  void tempers() throws IOException {
    assertThat(TemperTables.read("example", example("\"compressiveYield\"")).rows()).hasSize(1);
  }

  @Test
  void ruleSet() throws IOException {
    assertThat(RuleTables.read("example", example("\"railDirections\"")).figures()).hasSize(1);
  }

  @Test
  void ruleSetThatInherits() throws IOException {
    OwnRules own = Library.read("example", example("\"inherits\"")).rules().get(0);
    RuleSet base = RuleTables.ruleSet("as-1657");
    RuleSet whole = own.on(Map.of(base.id(), base));

    assertThat(whole.id()).isEqualTo("our-brief");
    assertThat(whole.figures()).hasSameSizeAs(base.figures());
    assertThat(whole.figure(RuleSet.FLOOR_AREA).source().work()).isEqualTo("brief of the house");
    assertThat(whole.find(RuleSet.FLOOR_POINT)).isEqualTo(base.find(RuleSet.FLOOR_POINT));
    assertThat(whole.railDirections()).isEqualTo(base.railDirections());
  }

  @Test
  void combinations() throws IOException {
    assertThat(CombinationTables.read("example", example("\"templates\"")).templates()).hasSize(1);
  }

  @Test
  void sectionsAndBoltsWithCommas() throws IOException {
    List<Library> libraries = new ArrayList<>();
    Matcher blocks =
        Pattern.compile("```csv\\n(.*?)```", Pattern.DOTALL)
            .matcher(Files.readString(GUIDE, StandardCharsets.UTF_8));
    while (blocks.find()) {
      libraries.add(
          Library.read(
              "example.csv",
              new ByteArrayInputStream(blocks.group(1).getBytes(StandardCharsets.UTF_8))));
    }

    assertThat(libraries).hasSize(2);
    assertThat(libraries.get(0).sections()).hasSize(2);
    assertThat(libraries.get(1).bolts().grades()).hasSize(1);
  }

  /** The only example that has a member. */
  private static InputStream example(String member) throws IOException {
    Matcher blocks =
        Pattern.compile("```json\\n(.*?)```", Pattern.DOTALL)
            .matcher(Files.readString(GUIDE, StandardCharsets.UTF_8));
    String found =
        blocks
            .results()
            .map(block -> block.group(1))
            .filter(block -> block.contains(member))
            .reduce(
                (one, another) -> {
                  throw new IllegalStateException("Two examples have " + member);
                })
            .orElseThrow();
    return new ByteArrayInputStream(found.getBytes(StandardCharsets.UTF_8));
  }
}
