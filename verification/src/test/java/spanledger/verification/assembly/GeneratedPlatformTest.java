package spanledger.verification.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import spanledger.action.ActionPlanner;
import spanledger.action.Actions;
import spanledger.action.CategorisedCase;
import spanledger.action.LoadCase;
import spanledger.action.Rail;
import spanledger.action.Surface;
import spanledger.analysis.CaseResult;
import spanledger.analysis.FrameAnalysis;
import spanledger.analysis.Reaction;
import spanledger.frame.Member;
import spanledger.frame.Node;
import spanledger.frame.Vector;
import spanledger.job.Job;
import spanledger.verdict.Assessor;
import spanledger.verdict.Status;
import spanledger.verdict.Verdict;

/**
 * The inspection platform of the packing house twice: nodes and members typed by hand, and
 * generated from its description. The names differ; all else must be the same.
 */
class GeneratedPlatformTest {

  private static Job byHand;
  private static Job generated;

  @BeforeAll
  static void read() {
    byHand = Examples.job("packing-house-inspection-platform");
    generated = Examples.job("packing-house-inspection-platform-by-parts");
  }

  @Test
  void nodesAreAtTheSamePlaces() {
    assertThat(places(generated)).isEqualTo(places(byHand));
    assertThat(generated.frame().nodes()).hasSameSizeAs(byHand.frame().nodes());
  }

  @Test
  void membersAreTheSame() {
    assertThat(members(generated.frame().members()))
        .containsExactlyInAnyOrderElementsOf(members(byHand.frame().members()));
  }

  @Test
  void supportsHoldTheSameNodes() {
    assertThat(generated.frame().supports().stream().map(s -> place(s.node()) + s.restraints()))
        .containsExactlyInAnyOrderElementsOf(
            byHand.frame().supports().stream().map(s -> place(s.node()) + s.restraints()).toList());
  }

  @Test
  void floorsAndRailsAreTheSame() {
    assertThat(floors(generated)).containsExactlyInAnyOrderElementsOf(floors(byHand));
    assertThat(rails(generated)).containsExactlyInAnyOrderElementsOf(rails(byHand));
  }

  /**
   * Cases are named after members, so each is looked for among all of the other job that are not
   * matched yet. Tolerance: rounding of a solution whose unknowns stand in another order.
   */
  @Test
  void everyCaseGivesTheSameReactions() {
    List<Map<String, Vector>> left = new ArrayList<>(reactions(generated));

    for (Map<String, Vector> expected : reactions(byHand)) {
      Optional<Map<String, Vector>> same =
          left.stream().filter(found -> farthest(found, expected) < 1e-5).findFirst();
      assertThat(same).as("a case with the reactions " + expected).isPresent();
      left.remove(same.orElseThrow());
    }
    assertThat(left).isEmpty();
  }

  private static double farthest(Map<String, Vector> found, Map<String, Vector> expected) {
    assertThat(found.keySet()).isEqualTo(expected.keySet());
    double worst = 0;
    for (Map.Entry<String, Vector> one : expected.entrySet()) {
      Vector other = found.getOrDefault(one.getKey(), Vector.ZERO);
      worst = Math.max(worst, other.minus(one.getValue()).norm());
    }
    return worst;
  }

  /**
   * Tolerance: places of moving loads are refined to a few millimetres, the effect is flat there.
   */
  @Test
  void everyCheckGivesTheSameUtilisation() {
    List<Double> expected = utilisations(byHand);
    List<Double> found = utilisations(generated);

    assertThat(found).hasSameSizeAs(expected);
    for (int i = 0; i < expected.size(); i++) {
      assertThat(found.get(i)).isCloseTo(expected.get(i), within(1e-5));
    }
  }

  private static List<Double> utilisations(Job job) {
    return new Assessor(job.rules(), job.rails(), 2)
        .assess(new FrameAnalysis(job.frame()), plan(job), job.combinations()).verdicts().stream()
            .filter(v -> v.status() == Status.PASSED || v.status() == Status.FAILED)
            .map(Verdict::utilisation)
            .sorted()
            .toList();
  }

  private static Actions plan(Job job) {
    return ActionPlanner.plan(
        job.frame(), job.surfaces(), job.rails(), job.userCases(), job.rules(), job.combinations());
  }

  private static List<Map<String, Vector>> reactions(Job job) {
    List<LoadCase> cases = plan(job).cases().stream().map(CategorisedCase::loads).toList();
    assertThat(cases).hasSizeGreaterThan(30);
    return new FrameAnalysis(job.frame())
        .solve(cases).results().stream().map(GeneratedPlatformTest::reactions).toList();
  }

  private static Map<String, Vector> reactions(CaseResult result) {
    Map<String, Vector> forces = new TreeMap<>();
    for (Reaction reaction : result.reactions()) {
      forces.put(place(reaction.node()), reaction.force());
    }
    return forces;
  }

  private static List<String> places(Job job) {
    return job.frame().nodes().stream().map(GeneratedPlatformTest::place).sorted().toList();
  }

  private static String place(Node node) {
    Vector at = node.place();
    return Math.round(at.x()) + "," + Math.round(at.y()) + "," + Math.round(at.z());
  }

  /** A member by its places in order, from the end that comes first, and all else that counts. */
  private static String member(Member member) {
    List<String> along =
        new ArrayList<>(member.nodes().stream().map(GeneratedPlatformTest::place).toList());
    if (along.get(0).compareTo(along.get(along.size() - 1)) > 0) {
      Collections.reverse(along);
    }
    assertThat(member.start()).as("both ends of a member are alike here").isEqualTo(member.end());
    return member.role()
        + " "
        + along
        + " "
        + member.section().name()
        + " "
        + member.alloy().designation()
        + " "
        + member.roll()
        + " "
        + member.start();
  }

  private static List<String> members(List<Member> members) {
    return members.stream().map(GeneratedPlatformTest::member).toList();
  }

  private static List<String> floors(Job job) {
    return job.surfaces().stream()
        .map(
            (Surface s) ->
                s.corners().stream().map(GeneratedPlatformTest::place).sorted().toList()
                    + " on "
                    + members(s.carriedBy()).stream().sorted().toList()
                    + s.finishes())
        .toList();
  }

  private static List<String> rails(Job job) {
    return job.rails().stream()
        .map(
            (Rail r) ->
                r.kind()
                    + members(r.members()).stream().sorted().collect(Collectors.joining())
                    + members(r.posts()).stream().sorted().collect(Collectors.joining())
                    + r.outward())
        .toList();
  }
}
