package spanledger.verification.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spanledger.assembly.CrossBearers;
import spanledger.assembly.GeneratedFrame;
import spanledger.assembly.Guardrail;
import spanledger.assembly.KneeBraces;
import spanledger.assembly.Platform;
import spanledger.assembly.Side;
import spanledger.frame.Member;
import spanledger.frame.Vector;

/** Numbers and places of generated pieces, counted by hand. */
class GeneratedCountsTest {

  /**
   * Counted by hand: 2 (b + 1) posts; 2 b edge beams; bearers: 1 + b · ceil(bay / 600); rails 2 b +
   * 2 for each of top, middle and toe; ties 2 b.
   */
  @ParameterizedTest
  @CsvSource({
    "1200, 1, 4, 2, 3, 12, 2",
    "4800, 4, 10, 8, 9, 30, 8",
    "3000, 2, 6, 4, 7, 18, 4",
    "6000, 5, 12, 10, 11, 36, 10",
    "9000, 3, 8, 6, 16, 24, 6",
  })
  void piecesOfAPlatform(
      double length, int bays, int posts, int edges, int bearers, int rails, int ties) {
    GeneratedFrame made = made(Described.platform(length, 1000, 2000, bays));

    assertThat(count(made, "/post-")).isEqualTo(posts);
    assertThat(made.feet()).hasSize(posts);
    assertThat(count(made, "/edge-")).isEqualTo(edges);
    assertThat(count(made, "/bearer")).isEqualTo(bearers);
    assertThat(count(made, "/top-") + count(made, "/middle-") + count(made, "/toe-"))
        .isEqualTo(rails);
    assertThat(count(made, "/tie-")).isEqualTo(ties);
    assertThat(made.surfaces()).hasSize(bays);
    assertThat(made.rails()).hasSize(12);
  }

  /**
   * A stair of n rises: n - 1 treads, two stringers of length sqrt(H² + (n g)²), and posts at
   * treads at most floor(1200 / g) goings apart, the last stretch ending at the platform's posts.
   */
  @ParameterizedTest
  @CsvSource({
    // rises, going, height, treads, stringer, posts on each side
    "10, 250, 2000, 9, 3201.562, 3",
    "8, 300, 1500, 7, 2830.194, 2",
    "5, 250, 1000, 4, 1600.781, 1",
    "12, 240, 2100, 11, 3564.323, 3",
  })
  void piecesOfAStair(
      int rises, double going, double height, int treads, double stringer, int posts) {
    GeneratedFrame made =
        Described.generate(
                Described.platform(2400, 1000, height, 2),
                Described.stair(Side.EAST, 0, 1000, rises, going))
            .frame()
            .orElseThrow();

    assertThat(count(made, "stair1/tread")).isEqualTo(treads);
    assertThat(member(made, "stair1/stringer-left").length()).isCloseTo(stringer, within(1e-3));
    assertThat(count(made, "stair1/post-left")).isEqualTo(posts);
    assertThat(count(made, "stair1/top-right")).isEqualTo(posts);
    assertThat(count(made, "floor1/top-east")).as("the stair opens this side").isZero();
  }

  /** One who goes west up the east side has south on the left. */
  @Test
  void leftAndRightAreThoseOfOneWhoGoesUp() {
    GeneratedFrame made =
        Described.generate(
                Described.platform(2400, 1000, 2000, 2),
                Described.stair(Side.EAST, 0, 1000, 10, 250))
            .frame()
            .orElseThrow();

    Member left = member(made, "stair1/stringer-left");
    assertThat(left.nodes().get(0).place()).isEqualTo(new Vector(4900, 0, 0));
    assertThat(left.nodes().get(left.nodes().size() - 1).place())
        .isEqualTo(new Vector(2400, 0, 2000));
  }

  /**
   * Floor posts 4 m apart, top rail wants support every 3 m: one stand-alone rail post goes
   * between, at 2 m (common practice, no source).
   */
  @Test
  void aRailPostStandsBetweenPostsFourMetresApart() {
    Guardrail rail = Described.guardrail(List.of());
    Platform wide =
        Described.with(
            Described.platform(4000, 1000, 2000, 1),
            new Guardrail(
                rail.height(),
                rail.topRail(),
                rail.middleRails(),
                rail.toeBoard(),
                rail.sides(),
                rail.railPost(),
                3000,
                List.of(),
                List.of()));

    GeneratedFrame made = made(wide);

    assertThat(count(made, "/rail-post-")).isEqualTo(2);
    assertThat(member(made, "floor1/rail-post-north-post1").nodes().get(0).place())
        .isEqualTo(new Vector(2000, 1000, 2000));
    assertThat(made.stretches()).allMatch(stretch -> stretch.length() <= 3000);
  }

  /** Cross bearers at most 700 mm from the ends (common practice, no source): here at 700 mm. */
  @Test
  void bearersStandFromTheEnds() {
    Platform p = Described.platform(4000, 1000, 2000, 1);
    GeneratedFrame made =
        made(Described.with(p, new CrossBearers(Described.PART, 700, 700), p.bracing()));

    // 4000 - 2 · 700 = 2600 mm between, in four parts of 650 mm
    assertThat(
            made.members().stream()
                .filter(m -> m.name().startsWith("floor1/bearer"))
                .map(m -> m.nodes().get(0).place().x()))
        .containsExactly(700.0, 1350.0, 2000.0, 2650.0, 3300.0);
  }

  /** Knee braces across by 350 and down by 500 are sqrt(350² + 500²) = 610.328 mm long. */
  @Test
  void kneeBraces() {
    Platform p = Described.platform(2400, 1000, 2000, 2);
    GeneratedFrame made =
        made(
            Described.with(
                p,
                p.bearers(),
                Described.bracing(
                    Optional.empty(),
                    Optional.of(new KneeBraces(Described.PART, 500, 350, true, true, Set.of())),
                    Optional.empty())));

    // 6 across, and along: one at each end post, two at each inner one
    assertThat(count(made, "/knee-")).isEqualTo(6 + 8);
    assertThat(member(made, "floor1/knee-south2").length()).isCloseTo(610.328, within(1e-3));
  }

  private static GeneratedFrame made(Platform platform) {
    return Described.generate(platform).frame().orElseThrow();
  }

  private static long count(GeneratedFrame made, String within) {
    return made.members().stream().filter(m -> m.name().contains(within)).count();
  }

  private static Member member(GeneratedFrame made, String name) {
    return made.members().stream().filter(m -> m.name().equals(name)).findFirst().orElseThrow();
  }
}
