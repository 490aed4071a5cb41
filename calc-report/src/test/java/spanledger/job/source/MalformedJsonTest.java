package spanledger.job.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spanledger.job.problem.Problem;
import spanledger.job.problem.ProblemLog;

/** Where a text stops being JSON, one message says so. */
class MalformedJsonTest {

  /** In the texts, ¶ stands for a line break and ` for a quotation mark. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\u0001',
      value = {
        "{`a`: 1,¶}                | 2:1 | a comma before the closing } | remove it",
        "[1,¶]                     | 2:1 | a comma before the closing ] | remove it",
        "{'a': 1}                  | 1:2 | a single quotation mark | write ` in place of '",
        "{a: 1}                    | 1:2 | the word `a` | write `a`",
        "{`a` 1}                   | 1:6 | the character `1` after a key | add the colon",
        "{`a`: 1¶`b`: 2}           | 2:1 | directly after a value | add the comma",
        "[[1] [2]]                 | 1:6 | directly after a value | add the comma",
        "[1,¶2                     | 2:2 | the end of the file inside the list [ of line 1 | add the missing ]",
        "{`a`: {¶`b`: 1            | 2:7 | the end of the file inside the object { of line 1 | add the missing }",
        "{`a`: `x¶`}               | 1:9 | a text that is not closed; it begins on line 1 | close the text",
        "{`a`:¶`x}                 | 2:4 | a text that is not closed; it begins on line 2 | close the text",
        "[1, // width¶2]           | 1:5 | a comment | `notes`",
        "{`a`: 1, # width¶`b`: 2}  | 1:10 | a comment | `notes`",
        "[1,,2]                    | 1:4 | the character `,` | check this place",
        "{`a`: 012}                | 1:8 | a number that JSON does not have | no leading zeros",
        "{`a`: 12.}                | 1:9 | a number that JSON does not have | before and after the point",
        "{`a`: +12}                | 1:8 | a number that JSON does not have | no plus sign",
        "{`a`: .5}                 | 1:7 | a number that JSON does not have | before and after the point",
        "{`a`: 12 mm}              | 1:10 | the word `mm` | put texts in double quotation marks",
        "{`a`: NaN}                | 1:7 | the word `NaN` | put texts in double quotation marks",
        "{`a`: True}               | 1:7 | the word `True` | put texts in double quotation marks",
        "{`a`: `C:\\path`}          | 1:11 | an escape that JSON does not have | write \\\\ for a backslash",
        "{`a`: 1]                  | 1:8 | a closing ] while the { of line 1 is open | close the inner bracket first",
        "{`a`: 1}}                 | 1:9 | a closing } that nothing opens | remove it",
        "{`a`: }                   | 1:7 | a closing } where a value is due | add the value",
        "{`a`: 1} {`b`: 2}         | 1:10 | more text after the end of the job | remove what follows",
      })
  void theFaultIsToldWithItsPlace(String text, String place, String found, String remedy) {
    Problem problem = only(text.replace('¶', '\n').replace('`', '"'));

    assertThat(problem.place().line() + ":" + problem.place().column()).isEqualTo(place);
    assertThat(problem.found()).contains(found.replace('`', '"'));
    assertThat(problem.remedy()).contains(remedy.replace('`', '"'));
  }

  @Test
  void nestingWithoutEndIsRefusedBeforeItExhaustsTheStack() {
    assertThat(only("[".repeat(100_000)).found()).contains("nested too deep");
  }

  @Test
  void aNumberOfThousandsOfDigitsIsRefused() {
    assertThat(only("[" + "1".repeat(5000) + "]").found()).contains("number or name far too long");
  }

  @Test
  void aTabWithinATextIsTold() {
    assertThat(only("[\"a\tb\"]").found()).contains("tab or control character");
  }

  private static Problem only(String text) {
    ProblemLog log = new ProblemLog("job.json");
    assertThat(JsonTreeReader.read(text, log)).isEmpty();
    List<Problem> problems = log.inOrder();
    assertThat(problems).hasSize(1);
    return problems.get(0);
  }
}
