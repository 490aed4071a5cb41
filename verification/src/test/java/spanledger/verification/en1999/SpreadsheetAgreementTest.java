package spanledger.verification.en1999;

import java.io.IOException;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spanledger.material.BucklingClass;
import spanledger.resistance.member.Effect;
import spanledger.resistance.member.MemberCase;
import spanledger.resistance.member.PreparedMember;
import spanledger.resistance.member.Weld;

/**
 * Whole members as sheets of formulas that feed one another, worked out by Apache POI: every number
 * that Java found, and every link between calculations.
 */
class SpreadsheetAgreementTest {

  static Stream<MemberCase> members() {
    return Stream.of(
        given("tube", 80, 40, 2, 2),
        given("i", 200, 100, 3, 2),
        given("channel", 120, 50, 5, 4),
        given("angle", 80, 50, 5),
        given("round tube", 48, 3),
        given("bar", 40, 20),
        given("tube", 80, 40, 4, 4)
            .withWelds(
                List.of(
                    new Weld.Across(
                        "cleat", 400, Weld.Method.MIG, OptionalDouble.empty(), GivenMember.CASE),
                    new Weld.Along(
                        "seam",
                        "web left",
                        30,
                        Weld.Method.MIG,
                        OptionalDouble.of(15),
                        GivenMember.CASE))));
  }

  private static MemberCase given(String shape, double... sizes) {
    return GivenMember.equalLengths(
        GivenMember.shape(shape, sizes), GivenMember.alloy(200, 245, BucklingClass.A), 1200);
  }

  @ParameterizedTest
  @MethodSource("members")
  void everyStepOfEveryRun(MemberCase given) throws IOException {
    PreparedMember member = GivenMember.prepared(1.1, given);
    double[] effects = Effect.uniform(-4000, 200, 700, 2e4, 3e5, -5e4);
    effects[Effect.PLACE.ordinal()] = 390;
    effects[Effect.PART_Y.ordinal()] = 0.3;
    LinkedSheet.agrees(member, effects);
  }
}
