package spanledger.verification.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import spanledger.action.ActionPlanner;
import spanledger.action.Actions;
import spanledger.action.CategorisedCase;
import spanledger.action.SegmentLoad;
import spanledger.assembly.CrossBearers;
import spanledger.assembly.EdgeBeams;
import spanledger.assembly.GeneratedFrame;
import spanledger.assembly.Guardrail;
import spanledger.assembly.Part;
import spanledger.assembly.Platform;
import spanledger.frame.Member;
import spanledger.frame.MemberEnd;
import spanledger.frame.Restraint;
import spanledger.frame.Vector;
import spanledger.tables.CombinationTables;
import spanledger.tables.RuleTables;

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

  private static GeneratedFrame whole;
  private static GeneratedFrame standingBack;
  private static List<Member> rails;

  @BeforeAll
  static void generate() {
    whole = generated(Described.PART, Described.PART);
    Part beam =
        new Part(
            "beam",
            Described.PART.section(),
            "main",
            Described.PART.alloy(),
            0,
            MemberEnd.RIGID,
            MemberEnd.RIGID,
            40);
    standingBack = generated(beam, RAIL);
    rails = standingBack.members().stream().filter(m -> m.name().contains("/top-")).toList();
  }

  private static GeneratedFrame generated(Part beam, Part rail) {
    Guardrail guardrail =
        new Guardrail(
            1000,
            rail,
            List.of(),
            Optional.empty(),
            Described.ALL_SIDES,
            Optional.empty(),
            Double.POSITIVE_INFINITY,
            List.of(),
            List.of());
    Platform platform = Described.with(Described.platform(4000, 1000, 900, 2), guardrail);
    return Described.generate(
            PlatformVariant.of(platform)
                .with(new EdgeBeams(beam, 1))
                .with(new CrossBearers(beam, 600, 0))
                .platform())
        .frame()
        .orElseThrow();
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

  /** Statics: what the floor and the rails carry does not depend on where the joints act. */
  @Test
  void floorAndRailsBearAsMuchAsBetweenCentreLines() {
    Map<String, Vector> between = totals(whole);
    Map<String, Vector> back = totals(standingBack);

    assertThat(back.keySet()).isEqualTo(between.keySet());
    assertThat(between.get("finishes floor1/deck/bay1").z())
        .as("0.1 kN/m2 on 2 m by 1 m")
        .isCloseTo(-200, within(1e-9));
    back.forEach(
        (name, total) ->
            assertThat(total.minus(between.get(name)).norm()).as(name).isLessThan(1e-9));
  }

  /** The sum of the forces of every case but the members' weight. */
  private static Map<String, Vector> totals(GeneratedFrame frame) {
    Actions actions =
        ActionPlanner.plan(
            frame.frame(),
            frame.surfaces(),
            frame.rails(),
            List.of(),
            RuleTables.ruleSet("en-iso-14122"),
            CombinationTables.set("en-1990"));
    Map<String, Vector> totals = new TreeMap<>();
    for (CategorisedCase one : actions.cases()) {
      if (one.vertical().isEmpty() && !one.loads().name().equals("self-weight")) {
        totals.put(
            one.loads().name(),
            one.loads().segmentLoads().stream()
                .map(PartEndsTest::force)
                .reduce(Vector.ZERO, Vector::plus));
      }
    }
    return totals;
  }

  private static Vector force(SegmentLoad load) {
    if (load instanceof SegmentLoad.Point point) {
      return point.direction().times(point.force());
    }
    SegmentLoad.Distributed spread = (SegmentLoad.Distributed) load;
    return spread.direction().times(spread.intensityFrom() * (spread.to() - spread.from()));
  }
}
