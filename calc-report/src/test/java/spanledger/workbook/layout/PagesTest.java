package spanledger.workbook.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Where pages break: pages of 100 pt, rows of 10 pt, 20 pt repeated on every further page. */
class PagesTest {

  private final Pages pages = new Pages(100, 20, row -> 10);

  @Test
  void aShortBlockIsNotTorn() {
    // Rows 0 to 6, 7 to 10, 11 to 15: the second block would reach from 70 to 110 pt; with what is
    // repeated, the third would reach from 60 to 110 pt, and is begun as it is longer than short.
    assertThat(pages.breaks(List.of(7, 11), Set.of(), 15)).containsExactly(6);
    assertThat(pages.breaks(List.of(7, 11), Set.of(), 14)).containsExactly(6);
    assertThat(pages.breaks(List.of(8, 12), Set.of(), 14)).containsExactly(7);
  }

  @Test
  void blocksThatFitTogetherStandTogether() {
    assertThat(pages.breaks(List.of(3, 6), Set.of(), 9)).isEmpty();
  }

  @Test
  void aLongBlockBeginsWhereItStandsIfAThirdOfThePageIsLeft() {
    assertThat(pages.breaks(List.of(5), Set.of(), 40)).isEmpty();
    assertThat(pages.breaks(List.of(8), Set.of(), 40)).containsExactly(7);
  }

  @Test
  void aBreakMayBeForced() {
    assertThat(pages.breaks(List.of(3, 6), Set.of(6), 9)).containsExactly(5);
  }

  @Test
  void theFirstPageEndsWithTheLastRowThatFits() {
    assertThat(pages.lastOfFirstPage(50)).isEqualTo(9);
    assertThat(pages.lastOfFirstPage(4)).isEqualTo(4);
  }
}
