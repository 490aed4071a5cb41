package spanledger.verification.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import spanledger.analysis.FrameAnalysis;
import spanledger.assembly.AssemblyProblem;
import spanledger.assembly.GeneratedFrame;
import spanledger.assembly.Generation;
import spanledger.assembly.Guardrail;
import spanledger.assembly.Platform;
import spanledger.assembly.Posts;
import spanledger.assembly.Side;
import spanledger.frame.Member;
import spanledger.frame.Node;
import spanledger.frame.Restraint;
import spanledger.frame.Vector;

/** Platforms side by side share the posts, beams and bearers of the side on which they meet. */
class AdjoiningPlatformsTest {

  private static final Set<Side> NO_EAST = Set.of(Side.NORTH, Side.SOUTH, Side.WEST);
  private static final Set<Side> NO_WEST = Set.of(Side.NORTH, Side.SOUTH, Side.EAST);

  private static Platform sided(Platform platform, Set<Side> sides) {
    Guardrail rail = Described.guardrail(List.of());
    return Described.with(
        platform,
        new Guardrail(
            rail.height(),
            rail.topRail(),
            rail.middleRails(),
            rail.toeBoard(),
            sides,
            rail.railPost(),
            rail.postSpacing(),
            rail.posts(),
            rail.gates()));
  }

  private static Platform part(String name, double x, double y, double height, Set<Side> sides) {
    return sided(
        Described.named(Described.platform(3000, 1200, height, 2), name, new Vector(x, y, 0)),
        sides);
  }

  private static GeneratedFrame made(Platform... platforms) {
    Generation generation = Described.generate(platforms);
    assertThat(generation.problems()).extracting(AssemblyProblem::words).isEmpty();
    GeneratedFrame frame = generation.frame().orElseThrow();
    new FrameAnalysis(frame.frame());
    return frame;
  }

  /** How many members run through which places, in millimetres. */
  private static Map<String, Integer> courses(GeneratedFrame frame) {
    Map<String, Integer> courses = new HashMap<>();
    for (Member member : frame.members()) {
      TreeSet<String> places = new TreeSet<>();
      member.nodes().forEach(node -> places.add(words(node)));
      courses.merge(member.role() + " " + places, 1, Integer::sum);
    }
    return courses;
  }

  private static String words(Node node) {
    Vector p = node.place();
    return Math.round(p.x()) + "|" + Math.round(p.y()) + "|" + Math.round(p.z());
  }

  /** Two platforms of 3 m end to end are one of 6 m: the same members between the same places. */
  @Test
  void twoPlatformsEndToEndAreOneLongPlatform() {
    GeneratedFrame two =
        made(part("floor1", 0, 0, 2000, NO_EAST), part("floor2", 3000, 0, 2000, NO_WEST));
    GeneratedFrame one =
        made(
            sided(
                Described.named(Described.platform(6000, 1200, 2000, 4), "floor1", Vector.ZERO),
                Described.ALL_SIDES));

    assertThat(courses(two)).isEqualTo(courses(one));
    assertThat(two.nodes()).hasSameSizeAs(one.nodes());
    assertThat(two.feet()).hasSameSizeAs(one.feet());
    assertThat(two.surfaces()).hasSameSizeAs(one.surfaces());
  }

  /**
   * By hand: each platform alone has 6 posts, 4 edge beams, 7 bearers, 4 ties; together the side
   * where they meet has 3 posts, 2 beams and 2 ties once.
   */
  @Test
  void twoPlatformsSideBySideShareTheirLongSide() {
    GeneratedFrame two =
        made(
            part("floor1", 0, 0, 2000, Set.of(Side.SOUTH, Side.EAST, Side.WEST)),
            part("floor2", 0, 1200, 2000, Set.of(Side.NORTH, Side.EAST, Side.WEST)));

    Function<String, Long> count =
        word -> two.members().stream().filter(m -> m.name().contains("/" + word)).count();
    assertThat(count.apply("post-")).isEqualTo(9);
    assertThat(count.apply("edge-")).isEqualTo(6);
    assertThat(count.apply("bearer")).isEqualTo(14);
    assertThat(count.apply("tie")).isEqualTo(6);
    assertThat(two.feet()).hasSize(9);
    assertThat(two.members()).extracting(Member::name).doesNotContain("floor2/post-south1");
  }

  /** By hand: floors at 2.0 and 2.4 m, rails 1 m above; the post goes from the ground to 3.4 m. */
  @Test
  void aPostBetweenTwoLevelsRunsThroughBoth() {
    GeneratedFrame two =
        made(part("floor1", 0, 0, 2000, NO_EAST), part("floor2", 3000, 0, 2400, NO_WEST));

    Member post =
        two.members().stream()
            .filter(m -> m.name().equals("floor1/post-north3"))
            .findFirst()
            .orElseThrow();
    assertThat(post.nodes())
        .extracting(node -> node.place().z())
        .contains(0.0, 300.0, 2000.0, 3000.0, 2400.0, 3400.0);
    assertThat(post.nodes().get(post.nodes().size() - 1).place().z()).isCloseTo(3400, within(1e-9));
    assertThat(two.members()).filteredOn(m -> m.name().contains("post-")).hasSize(10);
  }

  @Test
  void aGuardrailBetweenThemStandsOnce() {
    Generation both =
        Described.generate(
            part("floor1", 0, 0, 2000, Described.ALL_SIDES),
            part("floor2", 3000, 0, 2000, Described.ALL_SIDES));

    assertThat(both.problems()).hasSize(1);
    assertThat(both.problems().get(0).words())
        .contains("floor2/top-west/span1", "lies in floor1/top-east/span1", "of one guardrail");
  }

  @Test
  void aFootThatIsHeldInTwoWaysIsRefused() {
    Platform other = part("floor2", 3000, 0, 2000, NO_WEST);
    Platform fixed =
        PlatformVariant.of(other)
            .with(
                new Posts(
                    Described.PART,
                    true,
                    java.util.Collections.nCopies(6, Restraint.FIXED),
                    Map.of()))
            .platform();

    Generation generation = Described.generate(part("floor1", 0, 0, 2000, NO_EAST), fixed);

    assertThat(generation.frame()).isEmpty();
    assertThat(generation.problems())
        .allSatisfy(
            problem -> {
              assertThat(problem.path()).containsExactly("platforms", "floor2", "posts", "foot");
              assertThat(problem.words()).contains("shares with floor1/post-", "same \"foot\"");
            });
    assertThat(generation.problems()).hasSize(2);
  }

  /** Wherever a second platform stands, the frame is stable without members twice, or says why. */
  @Property(tries = 150)
  void anywhereBesideAnotherItIsSharedOrRefused(
      @ForAll @IntRange(min = -14, max = 14) int east,
      @ForAll @IntRange(min = -6, max = 6) int north,
      @ForAll @IntRange(min = -2, max = 2) int up) {
    Generation generation =
        Described.generate(
            part("floor1", 0, 0, 2000, Set.of(Side.SOUTH)),
            part("floor2", 250.0 * east, 300.0 * north, 2000 + 200.0 * up, Set.of(Side.NORTH)));

    Optional<GeneratedFrame> frame = generation.frame();
    if (frame.isEmpty()) {
      assertThat(generation.problems()).isNotEmpty();
      return;
    }
    new FrameAnalysis(frame.get().frame());
    assertThat(courses(frame.get()).values()).allMatch(count -> count == 1);
    TreeSet<String> places = new TreeSet<>();
    assertThat(frame.get().nodes()).allMatch(node -> places.add(words(node)));
  }
}
