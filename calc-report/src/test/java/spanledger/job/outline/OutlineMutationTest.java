package spanledger.job.outline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/**
 * Whatever is wrong with the numbers of an outline file, it is accepted or refused with reasons.
 */
class OutlineMutationTest {

  private static final Pattern NUMBER =
      Pattern.compile("(?<=[\\[ ,:])-?\\d+(\\.\\d+)?(?=[,\\]} ])");

  private static final List<String> FILES =
      List.of("slotted-beam.json", "two-bars.json", "changed-plates.json");

  /**
   * One number of a file changed.
   *
   * @param file which file
   * @param place which of its numbers, from 0 (first) to 1 (last)
   * @param number what takes its place
   */
  private record Change(String file, double place, String number) {
    String text() {
      String text = Outlines.resource(file);
      List<int[]> places = new ArrayList<>();
      Matcher numbers = NUMBER.matcher(text);
      while (numbers.find()) {
        places.add(new int[] {numbers.start(), numbers.end()});
      }
      int[] at = places.get((int) Math.min(places.size() - 1, place * places.size()));
      return text.substring(0, at[0]) + number + text.substring(at[1]);
    }
  }

  @Provide
  Arbitrary<Change> changes() {
    return Combinators.combine(
            Arbitraries.of(FILES),
            Arbitraries.doubles().between(0, 1),
            Arbitraries.oneOf(
                Arbitraries.of("0", "-1", "1e-75", "1e75", "1e999", "5", "20", "\"1 in\"", "\"x\""),
                Arbitraries.integers().between(-80, 80).map(String::valueOf),
                Arbitraries.doubles().between(-5, 60).map(String::valueOf)))
        .as(Change::new);
  }

  @Property(tries = 300)
  void aChangedFileIsAcceptedOrRefusedWithReasons(@ForAll("changes") Change change) {
    ReadOutline read = Outlines.read(change.text());

    if (read instanceof ReadOutline.Refused refused) {
      assertThat(refused.problems()).isNotEmpty();
    } else {
      assertThat(((ReadOutline.Accepted) read).extrusion().parts()).isNotEmpty();
    }
  }
}
