package spanledger.verification.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static spanledger.verification.joint.Parts.GIVEN;
import static spanledger.verification.joint.Parts.force;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spanledger.joint.Tightening;
import spanledger.resistance.joint.Bolt;
import spanledger.resistance.joint.Friction;
import spanledger.resistance.joint.HeldPlate;
import spanledger.resistance.joint.HoleInPlate;
import spanledger.resistance.joint.JointCheck;
import spanledger.resistance.joint.JointCode;
import spanledger.resistance.joint.JointState;
import spanledger.resistance.joint.LegForces;
import spanledger.resistance.joint.Metal;
import spanledger.resistance.joint.NetCut;
import spanledger.resistance.joint.Preload;
import spanledger.resistance.joint.SlipFaces;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;
import spanledger.verification.en1999.LinkedSheet;

/** Every code has every check; twice the demand never uses less, and no demand uses nothing. */
class EveryCheckTest {

  static List<JointCode> codes() {
    return Parts.codes();
  }

  @ParameterizedTest(name = "code {index}")
  @MethodSource("codes")
  void moreDemandNeverUsesLess(JointCode code) {
    List<JointCheck> none = all(code, 0);
    List<JointCheck> some = all(code, 1000);
    List<JointCheck> more = all(code, 2000);
    for (int i = 0; i < some.size(); i++) {
      String name = some.get(i).working().procedure().procedure().title();
      assertThat(none.get(i).utilisation()).as(name + ", no demand").isZero();
      assertThat(some.get(i).utilisation()).as(name).isPositive();
      assertThat(more.get(i).utilisation())
          .as(name + ", twice the demand")
          .isGreaterThanOrEqualTo(2 * some.get(i).utilisation() * (1 - 1e-12));
    }
  }

  @ParameterizedTest(name = "code {index}")
  @MethodSource("codes")
  void distancesCountWhatIsNear(JointCode code) {
    Metal metal = Parts.metal(250, 290);
    Bolt bolt = Parts.bolt("M8", "A4-70");
    assertThat(code.distances(bolt, Parts.hole(metal, 5, 0, 0, 0, 0)).utilisation()).isZero();
    assertThat(code.distances(bolt, Parts.hole(metal, 5, 18, 25, 18, 25)).utilisation())
        .isLessThanOrEqualTo(1);
    HoleInPlate close = Parts.hole(metal, 5, 18, 25, 7, 25);
    assertThat(code.distances(bolt, close).governing().symbol()).isEqualTo("η_e2");
    assertThat(code.distances(bolt, close).utilisation()).isGreaterThan(1);
  }

  @ParameterizedTest(name = "code {index}")
  @MethodSource("codes")
  void spreadsheetsAgree(JointCode code) throws IOException {
    List<Working> workings = new ArrayList<>();
    for (double demand : new double[] {0, 1500}) {
      all(code, demand).forEach(check -> addWithEarlier(check.working(), workings));
    }
    LinkedSheet.agrees(workings);
  }

  private static void addWithEarlier(Working working, List<Working> workings) {
    for (Feed feed : working.feeds()) {
      if (feed instanceof Feed.Result result) {
        addWithEarlier(result.from(), workings);
      }
    }
    if (!workings.contains(working)) {
      workings.add(working);
    }
  }

  private static List<JointCheck> all(JointCode code, double demand) {
    Metal metal = Parts.metal(250, 290);
    Bolt bolt = Parts.bolt("M8", "A4-70");
    JointCheck shear = code.boltShear(bolt, Parts.planes(1, true, 0, 0), force(demand));
    JointCheck tension = code.boltTension(bolt, "bolt", force(demand));
    JointCheck preload = Preload.of(bolt, new Tightening.Torque(15000, 0.1, 0.12, 0.2, GIVEN));
    SlipFaces faces = new SlipFaces("faces", 2, 1, new Friction(0.2, GIVEN), GIVEN);
    return List.of(
        shear,
        tension,
        code.boltShearAndTension(shear, tension),
        code.bearing(bolt, Parts.hole(metal, 5, 18, 25, 15, 0), force(demand)),
        code.blockTearing(Parts.block(metal, 60, 120, false), force(demand)),
        code.slip(faces, JointState.SERVICE, preload.feed("F_p_min"), force(0), force(demand)),
        code.slip(faces, JointState.ULTIMATE, preload.feed("F_p_min"), force(0), force(demand)),
        code.netSection(new NetCut("cut", metal, 200, 155, GIVEN), force(demand)),
        code.legAtBolt(bolt, Parts.stub(metal, 5, 14, 12, 20), force(demand)),
        code.headWings(bolt, Parts.head(metal, 5), force(demand)),
        code.headTurning(Parts.head(metal, 5), force(demand)),
        code.punching(
            bolt, new HeldPlate("plate", metal, 3, OptionalDouble.empty(), GIVEN), force(demand)),
        code.lips(Parts.lip(metal, 3, 16, 1000, 5), JointState.SERVICE, force(demand)),
        code.lips(Parts.lip(metal, 3, 16, 1000, 5), JointState.ULTIMATE, force(demand)),
        code.lipsWhileTightened(Parts.lip(metal, 3, 16, 1000, 5), force(demand)),
        code.wall(Parts.wall(metal, 3, 54, false, force(demand))),
        code.lipEdge(Parts.shank(metal, 3), force(demand)),
        code.key(Parts.key(metal, Parts.metal(140, 170), 5), force(demand)),
        code.leg(Parts.leg(metal, 5, 9), JointState.SERVICE, forces(demand)),
        code.leg(Parts.leg(metal, 5, 9), JointState.ULTIMATE, forces(demand)));
  }

  private static LegForces forces(double demand) {
    return new LegForces(force(10 * demand), force(demand), force(demand), force(0));
  }
}
