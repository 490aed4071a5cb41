package spanledger.verification.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import spanledger.action.DeckShares;
import spanledger.action.Rail;
import spanledger.action.Surface;
import spanledger.analysis.FrameAnalysis;
import spanledger.assembly.AssemblyProblem;
import spanledger.assembly.CrossBearers;
import spanledger.assembly.CrossBraces;
import spanledger.assembly.GeneratedFrame;
import spanledger.assembly.Generation;
import spanledger.assembly.Guardrail;
import spanledger.assembly.KneeBraces;
import spanledger.assembly.PlanBraces;
import spanledger.assembly.Platform;
import spanledger.assembly.Side;
import spanledger.frame.Node;

/** Any description makes a stable frame that carries its floors, or says why not. */
class GeneratedFrameProperties {

  /** Sizes of one platform with a stair. */
  record Sizes(
      double length,
      double width,
      double height,
      int bays,
      double spacing,
      double fromEnds,
      double postSpacing) {}

  /** Sizes of what is put on and under it. */
  record Extras(
      double drop,
      double reach,
      boolean crosses,
      Side stairSide,
      double offset,
      double stairWidth,
      double rise,
      double going,
      int gateBay) {}

  @Property(tries = 400)
  void anyDescriptionMakesAStableFrameOrSaysWhyNot(
      @ForAll("sizes") Sizes sizes, @ForAll("extras") Extras extras) {
    Generation generation = generate(sizes, extras);

    // Both outcomes must be met often, or the property says little.
    Statistics.label("outcome")
        .collect(generation.frame().isPresent() ? "made" : "refused")
        .coverage(
            outcome -> {
              outcome.check("made").percentage(share -> share > 5);
              outcome.check("refused").percentage(share -> share > 5);
            });
    if (generation.frame().isEmpty()) {
      assertThat(generation.problems()).isNotEmpty();
      assertThat(generation.problems()).allSatisfy(GeneratedFrameProperties::assertHelpful);
      return;
    }
    assertThat(generation.problems()).isEmpty();
    GeneratedFrame made = generation.frame().get();
    new FrameAnalysis(made.frame());
    made.surfaces().forEach(floor -> assertCarried(floor, made));
    made.rails().forEach(GeneratedFrameProperties::assertHeld);
    assertApart(made.nodes());
    assertThat(generate(sizes, extras)).isEqualTo(generation);
  }

  private static void assertHelpful(AssemblyProblem problem) {
    assertThat(problem.path()).hasSizeGreaterThanOrEqualTo(2);
    assertThat(problem.words()).doesNotContain("NaN", "Infinity", "null");
    assertThat(List.of(problem.found(), problem.expected(), problem.remedy()))
        .allSatisfy(words -> assertThat(words).isNotBlank());
  }

  /** Shares of a floor add up to its area; tolerance: rounding. */
  private static void assertCarried(Surface floor, GeneratedFrame made) {
    double carried =
        DeckShares.of(floor, made.frame()).stream()
            .mapToDouble(share -> (share.to() - share.from()) * share.width())
            .sum();
    double along = floor.corners().get(1).place().minus(floor.corners().get(0).place()).norm();
    double across = floor.corners().get(2).place().minus(floor.corners().get(1).place()).norm();
    assertThat(carried).as(floor.name()).isCloseTo(along * across, within(1e-6 * along * across));
  }

  private static void assertHeld(Rail rail) {
    assertThat(rail.posts())
        .as(rail.name())
        .allSatisfy(
            post ->
                assertThat(rail.members())
                    .anyMatch(member -> member.nodes().stream().anyMatch(post.nodes()::contains)));
  }

  private static void assertApart(List<Node> nodes) {
    for (int i = 0; i < nodes.size(); i++) {
      for (int j = 0; j < i; j++) {
        assertThat(nodes.get(i).place().minus(nodes.get(j).place()).norm()).isGreaterThan(1);
      }
    }
  }

  private static Generation generate(Sizes sizes, Extras extras) {
    Platform plain =
        Described.with(
            Described.platform(sizes.length(), sizes.width(), sizes.height(), sizes.bays()),
            new CrossBearers(Described.PART, sizes.spacing(), sizes.fromEnds()),
            Described.bracing(
                extras.crosses()
                    ? Optional.of(
                        new CrossBraces(
                            Described.PART,
                            200,
                            sizes.height() - extras.drop(),
                            Set.of(Side.NORTH, Side.EAST),
                            Set.of(1)))
                    : Optional.empty(),
                Optional.of(
                    new KneeBraces(
                        Described.PART, extras.drop(), extras.reach(), true, true, Set.of())),
                Optional.of(new PlanBraces(Described.PART, Set.of()))));
    Guardrail rail =
        new Guardrail(
            1000,
            Described.PART,
            List.of(new Guardrail.MiddleRail(Described.PART, 500)),
            Optional.empty(),
            Described.ALL_SIDES,
            Optional.of(Described.PART),
            sizes.postSpacing(),
            List.of(),
            List.of(new Guardrail.Gate(Side.NORTH, extras.gateBay(), 0, Optional.empty())));
    return Described.generate(
        Described.with(plain, rail),
        Described.stair(
            extras.stairSide(),
            extras.offset(),
            extras.stairWidth(),
            (int) Math.max(2, Math.round(sizes.height() / extras.rise())),
            extras.going()));
  }

  @Provide
  Arbitrary<Sizes> sizes() {
    return Combinators.combine(
            Arbitraries.of(1200.0, 2400.0, 3333.3, 6000.0, 9000.0),
            Arbitraries.of(600.0, 1000.0, 1234.5, 2000.0),
            Arbitraries.of(500.0, 1000.0, 1900.0, 2200.0, 3000.0),
            Arbitraries.integers().between(1, 5),
            Arbitraries.of(300.0, 600.0, 777.7),
            Arbitraries.of(0.0, 0.0, 0.0, 0.0, 350.0, 1500.0),
            Arbitraries.of(700.0, 1500.0, 3000.0))
        .as(Sizes::new);
  }

  @Provide
  Arbitrary<Extras> extras() {
    return Combinators.combine(
            Combinators.combine(
                    Arbitraries.of(200.0, 200.0, 300.0, 1500.0),
                    Arbitraries.of(120.0, 150.0, 200.0, 600.0),
                    Arbitraries.of(true, false),
                    Arbitraries.of(Side.values()))
                .as(
                    (drop, reach, crosses, side) ->
                        new Extras(drop, reach, crosses, side, 0, 0, 1, 0, 0)),
            Arbitraries.of(0.0, 100.0, 150.0, 200.0, 900.0),
            Arbitraries.of(400.0, 500.0, 600.0, 800.0),
            Arbitraries.of(150.0, 180.0, 210.0, 250.0, 400.0),
            Arbitraries.of(180.0, 215.0, 250.0, 300.0),
            Arbitraries.integers().between(1, 3))
        .as(
            (e, offset, width, rise, going, bay) ->
                new Extras(
                    e.drop(),
                    e.reach(),
                    e.crosses(),
                    e.stairSide(),
                    offset,
                    width,
                    rise,
                    going,
                    bay));
  }
}
