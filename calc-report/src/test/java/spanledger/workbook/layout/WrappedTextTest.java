package spanledger.workbook.layout;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lines that a text takes, by hand with the widths of {@link LetterWidths}. */
class WrappedTextTest {

  @ParameterizedTest
  @CsvSource({
    "area, 12, 1",
    // 12.2 digits wide in room for 10.7
    "bending about z, 12, 2",
    // one word of 24 digits is broken twice
    "012345678901234567890123, 12, 3",
    // the same in small letters fits into two
    "012345678901234567890123, 14, 2",
    "'one\ntwo', 12, 2",
  })
  void linesAreCounted(String words, int width, int lines) {
    assertThat(WrappedText.lines(words, width, Look.BODY)).isEqualTo(lines);
  }
}
