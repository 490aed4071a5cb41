package spanledger.picture.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import spanledger.frame.Member;
import spanledger.picture.Ink;

class SizesTest {

  @Test
  void equalSizesInARowAreWrittenOnce() {
    List<DimensionLines.Run> runs =
        DimensionLines.runs(List.of(0.0, 250.0, 850.0, 1450.0, 2050.0, 2300.0), 3);

    assertThat(runs.stream().map(DimensionLines.Run::words))
        .containsExactly("250", "3 × 600 = 1800", "250");
  }

  /** Whatever is taken together, a chain is as long as its sizes. */
  @Property(tries = 200)
  void runsAddUp(
      @ForAll @Size(min = 1, max = 12) List<@IntRange(min = 2, max = 5) Integer> hundreds,
      @ForAll @IntRange(min = 2, max = 4) int many) {
    List<Double> places = new ArrayList<>(List.of(0.0));
    hundreds.forEach(h -> places.add(places.get(places.size() - 1) + 100.0 * h));

    List<DimensionLines.Run> runs = DimensionLines.runs(places, many);

    assertThat(runs.stream().mapToInt(DimensionLines.Run::count).sum()).isEqualTo(hundreds.size());
    assertThat(runs.stream().mapToDouble(r -> r.size() * r.count()).sum())
        .isEqualTo(100.0 * hundreds.stream().mapToInt(h -> h).sum(), within(1e-9));
  }

  @Test
  void sizesAndLevelsAreWrittenAsDrawingsDo() {
    assertThat(Sizes.mm(187.5)).isEqualTo("187.5");
    assertThat(Sizes.mm(600.0000001)).isEqualTo("600");
    assertThat(Sizes.level(0)).isEqualTo("±0");
    assertThat(Sizes.level(3000)).isEqualTo("+3000");
    assertThat(Sizes.level(-40)).isEqualTo("−40");
    assertThat(Sizes.distinct(List.of(600.0, 0.0, 0.4, 599.7))).containsExactly(0.0, 599.7);
  }

  /** Bands are told apart in grey: each is darker than the one before by a tenth, and wider. */
  @Test
  void bandsOfUtilisationGetDarkerAndWider() {
    UseBand[] bands = UseBand.values();
    for (int i = 1; i < bands.length; i++) {
      assertThat(bands[i].ink().grey()).isLessThan(bands[i - 1].ink().grey() - 0.1);
      assertThat(bands[i].style().width()).isGreaterThan(bands[i - 1].style().width());
    }
    assertThat(bands[bands.length - 1]).isEqualTo(UseBand.FAILS);
    assertThat(UseBand.FAILS.style().core().orElseThrow().ink()).isEqualTo(Ink.WHITE);
    assertThat(UseBand.NEARLY_ALL.style().core()).isEmpty();
  }

  @Test
  void piecesShareTheNameOfTheirPartAndPartsThatOfTheirRow() {
    List<Member> members = Example.job("packing-house-two-flight-walkway").frame().members();

    List<PartNames.Named> named = PartNames.of(members);

    assertThat(named.stream().map(PartNames.Named::words))
        .contains("walkway/edge-north", "walkway/bearer1 to 9", "walkway/post-south1 to 5")
        .doesNotHaveDuplicates();
    assertThat(named.stream().flatMap(n -> n.members().stream()).map(Member::name))
        .containsExactlyInAnyOrderElementsOf(members.stream().map(Member::name).toList());
    assertThat(IntStream.range(0, 3).mapToObj(i -> members.get(i)).toList())
        .allSatisfy(m -> assertThat(PartNames.of(List.of(m)).get(0).words()).isEqualTo(m.name()));
  }
}
