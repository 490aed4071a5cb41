package spanledger.verification.assembly;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import spanledger.assembly.AssemblyProblem;
import spanledger.assembly.CrossBearers;
import spanledger.assembly.Generation;
import spanledger.assembly.Guardrail;
import spanledger.assembly.KneeBraces;
import spanledger.assembly.Platform;
import spanledger.assembly.Side;
import spanledger.frame.Vector;

/** What cannot be built is told with its place and with the range that would work. */
class ImpossibleAssembliesTest {

  private static final Platform PLATFORM = Described.platform(4800, 1000, 1900, 4);

  @Test
  void aGateWiderThanItsBay() {
    AssemblyProblem problem =
        only(
            Described.generate(
                Described.with(
                    PLATFORM,
                    Described.guardrail(
                        List.of(new Guardrail.Gate(Side.NORTH, 3, 200, Optional.of(1100.0)))))));

    assertThat(problem.path()).containsExactly("platforms", "floor1", "guardrail", "gates", "0");
    assertThat(problem.found()).contains("1100 mm", "200 mm", "bay of 1200 mm");
    assertThat(problem.expected()).contains("at most 1000 mm");
  }

  @Test
  void aPostOffThePlatform() {
    Guardrail rail = Described.guardrail(List.of());
    AssemblyProblem problem =
        only(
            Described.generate(
                Described.with(
                    PLATFORM,
                    new Guardrail(
                        rail.height(),
                        rail.topRail(),
                        rail.middleRails(),
                        rail.toeBoard(),
                        rail.sides(),
                        rail.railPost(),
                        rail.postSpacing(),
                        List.of(new Guardrail.PostPlace(Side.SOUTH, 5000)),
                        List.of()))));

    assertThat(problem.path()).endsWith("posts", "0");
    assertThat(problem.expected()).contains("from 0 mm to 4800 mm");
  }

  @Test
  void aStairWithTooFewRises() {
    AssemblyProblem problem =
        only(Described.generate(PLATFORM, Described.stair(Side.EAST, 0, 1000, 4, 250)));

    assertThat(problem.path()).containsExactly("stairs", "stair1", "rises");
    // 1900/4 = 475 mm; 1900/350 = 5.4 and 1900/80 = 23.75
    assertThat(problem.found()).contains("475 mm each");
    assertThat(problem.expected()).contains("from 6 to 23 of them");
  }

  @Test
  void aStairTooSteep() {
    AssemblyProblem problem =
        only(Described.generate(PLATFORM, Described.stair(Side.EAST, 0, 1000, 6, 150)));

    // 1900/6 = 316.7 mm over 150 mm is 64.7 deg; 60 deg needs 316.7/tan 60 = 182.8 mm
    assertThat(problem.found()).contains("64.7 deg");
    assertThat(problem.expected()).contains("from 183 mm");
  }

  @Test
  void aStairWiderThanTheSide() {
    AssemblyProblem problem =
        only(Described.generate(PLATFORM, Described.stair(Side.EAST, 300, 800, 10, 250)));

    assertThat(problem.path()).endsWith("width");
    assertThat(problem.expected()).contains("to 700 mm wide");
  }

  @Test
  void aStairAcrossAPost() {
    AssemblyProblem problem =
        only(Described.generate(PLATFORM, Described.stair(Side.NORTH, 800, 800, 10, 250)));

    assertThat(problem.found())
        .contains("stair stair1", "from 800 mm to 1600 mm", "post stands at 1200 mm");
  }

  @Test
  void postsTooNearEachOther() {
    AssemblyProblem problem =
        only(Described.generate(PLATFORM, Described.stair(Side.EAST, 60, 800, 10, 250)));

    assertThat(problem.found()).contains("60 mm", "from the post at 0 mm");
    assertThat(problem.remedy()).contains("move it to 0 mm");
  }

  @Test
  void platformsInEachOther() {
    List<AssemblyProblem> problems =
        Described.generate(PLATFORM, Described.named(PLATFORM, "floor2", new Vector(2400, 0, 0)))
            .problems();

    assertThat(problems).isNotEmpty();
    assertThat(problems.get(0).path()).containsExactly("platforms", "floor2");
    assertThat(problems.get(0).words()).contains("floor2/", "floor1/");
  }

  @Test
  void kneeBracesWithoutRoom() {
    AssemblyProblem problem =
        only(
            Described.generate(
                Described.with(
                    PLATFORM,
                    PLATFORM.bearers(),
                    Described.bracing(
                        Optional.empty(),
                        Optional.of(
                            new KneeBraces(Described.PART, 500, 600, true, false, Set.of())),
                        Optional.empty()))));

    assertThat(problem.path()).endsWith("kneeBraces", "reach");
    assertThat(problem.expected()).contains("from 20 mm to 490 mm");
  }

  @Test
  void allProblemsAreToldAtOnce() {
    Platform wrong =
        Described.with(
            Described.with(
                PLATFORM, new CrossBearers(Described.PART, 10, 1190), PLATFORM.bracing()),
            Described.guardrail(List.of()));

    List<AssemblyProblem> problems =
        Described.generate(wrong, Described.stair(Side.EAST, 0, 1000, 3, 250)).problems();

    assertThat(problems)
        .extracting(p -> String.join("/", p.path()))
        .contains(
            "stairs/stair1/rises",
            "platforms/floor1/crossBearers/fromEnds",
            "platforms/floor1/crossBearers/spacing");
  }

  private static AssemblyProblem only(Generation generation) {
    assertThat(generation.frame()).isEmpty();
    assertThat(generation.problems()).as(generation.problems().toString()).hasSize(1);
    return generation.problems().get(0);
  }
}
