package spanledger.verification.assembly;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import spanledger.assembly.Guardrail;
import spanledger.assembly.Part;
import spanledger.frame.Member;
import spanledger.frame.MemberEnd;
import spanledger.frame.Restraint;
import spanledger.frame.Vector;

/**
 * Rails whose two ends differ and stand back from the centre lines of their posts: given a platform
 * of 4 m by 1 m with posts every 2 m, and rails that stand back by 30 mm.
 */
class PartEndsTest {

  private static final MemberEnd FREE_TO_TWIST =
      new MemberEnd(Restraint.FREE, Restraint.FREE, Restraint.FREE, Vector.ZERO);

  private static final Part RAIL =
      new Part(
          "rail",
          Described.PART.section(),
          "main",
          Described.PART.alloy(),
          0,
          FREE_TO_TWIST,
          MemberEnd.PINNED,
          30);

  private static List<Member> rails;

  @BeforeAll
  static void generate() {
    Guardrail guardrail =
        new Guardrail(
            1000,
            RAIL,
            List.of(),
            Optional.empty(),
            Described.ALL_SIDES,
            Optional.empty(),
            Double.POSITIVE_INFINITY,
            List.of(),
            List.of());
    rails =
        Described.generate(Described.with(Described.platform(4000, 1000, 900, 2), guardrail))
            .frame()
            .orElseThrow()
            .members()
            .stream()
            .filter(member -> member.name().contains("/top-"))
            .toList();
  }

  @Test
  void startsAreWesternOrSouthernEndsAndAloneMayTwist() {
    assertThat(rails).hasSize(6);
    for (Member rail : rails) {
      assertThat(rail.nodes().get(0).place().x() + rail.nodes().get(0).place().y())
          .as(rail.name())
          .isLessThan(rail.nodes().get(1).place().x() + rail.nodes().get(1).place().y());
      assertThat(rail.start().torsion()).isEqualTo(Restraint.FREE);
      assertThat(rail.end().torsion()).isEqualTo(Restraint.FIXED);
    }
  }

  @Test
  void bothEndsStandBackAlongThePiece() {
    Set<Vector> arms = Set.of(new Vector(30, 0, 0), new Vector(0, 30, 0));
    for (Member rail : rails) {
      assertThat(arms).as(rail.name()).contains(rail.start().offset());
      assertThat(rail.end().offset().plus(rail.start().offset()).norm()).isZero();
    }
  }
}
