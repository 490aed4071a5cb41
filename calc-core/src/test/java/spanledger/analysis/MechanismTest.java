package spanledger.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import spanledger.action.NodalLoad;
import spanledger.frame.Frame;
import spanledger.frame.Freedom;
import spanledger.frame.Member;
import spanledger.frame.MemberEnd;
import spanledger.frame.Node;
import spanledger.frame.Restraint;
import spanledger.frame.Vector;

/** Frames that cannot stand name the node and the way it moves. */
class MechanismTest {

  /** Free to bend and to twist. */
  private static final MemberEnd LOOSE =
      new MemberEnd(Restraint.FREE, Restraint.FREE, Restraint.FREE, Vector.ZERO);

  private static MechanismException mechanism(Frame frame) {
    return catchThrowableOfType(MechanismException.class, () -> new FrameAnalysis(frame));
  }

  @Test
  void aPortalOnPinsWithPinnedCornersSwaysInItsPlane() {
    Node a = Bars.node("A", 0, 0, 0);
    Node b = Bars.node("B", 0, 0, 3_000);
    Node c = Bars.node("C", 4_000, 0, 3_000);
    Node d = Bars.node("D", 4_000, 0, 0);
    Frame frame =
        new Frame(
            List.of(a, b, c, d),
            List.of(
                Bars.member("AB", a, b),
                Bars.member("BC", MemberEnd.PINNED, MemberEnd.PINNED, b, c),
                Bars.member("DC", d, c)),
            List.of(
                Bars.hold(
                    a,
                    Freedom.SHIFT_X,
                    Freedom.SHIFT_Y,
                    Freedom.SHIFT_Z,
                    Freedom.TURN_X,
                    Freedom.TURN_Z),
                Bars.hold(
                    d,
                    Freedom.SHIFT_X,
                    Freedom.SHIFT_Y,
                    Freedom.SHIFT_Z,
                    Freedom.TURN_X,
                    Freedom.TURN_Z)));

    MechanismException found = mechanism(frame);

    assertThat(found.node()).isEqualTo(b);
    assertThat(found.freedom()).isEqualTo(Freedom.SHIFT_X);
    assertThat(found)
        .hasMessage(
            "Node B can move along X: hold it with a support or a brace, or make a joint rigid."
                + " Free to turn as it does so: the start of BC about its y axis, the end of BC about"
                + " its y axis.");
  }

  @Test
  void aFrameWithoutSupportsMoves() {
    Node a = Bars.node("A", 0, 0, 0);
    Node b = Bars.node("B", 2_000, 0, 0);
    assertThat(mechanism(new Frame(List.of(a, b), List.of(Bars.member("AB", a, b)), List.of())))
        .isNotNull();
  }

  @Test
  void aMemberHeldAgainstTwistNowhereTurnsAboutItsAxis() {
    Node a = Bars.node("A", 0, 0, 0);
    Node b = Bars.node("B", 1_500, 0, 0);
    Node c = Bars.node("C", 2_500, 0, 0);
    Node d = Bars.node("D", 4_000, 0, 0);
    Frame frame =
        new Frame(
            List.of(a, b, c, d),
            List.of(Bars.member("beam", LOOSE, LOOSE, a, b, c, d)),
            List.of(Bars.clamp(a), Bars.clamp(d)));

    MechanismException found = mechanism(frame);

    assertThat(found.node()).isEqualTo(b);
    assertThat(found.freedom()).isEqualTo(Freedom.TURN_X);
    assertThat(found).hasMessageContaining("Node B can turn about X");
  }

  @Test
  void aNodeBetweenTwoPinnedBarsInLineMovesAcrossThem() {
    Node a = Bars.node("A", 0, 0, 0);
    Node b = Bars.node("B", 1_000, 1_000, 0);
    Node c = Bars.node("C", 2_000, 2_000, 0);
    Frame frame =
        new Frame(
            List.of(a, b, c),
            List.of(
                Bars.member("AB", MemberEnd.PINNED, MemberEnd.PINNED, a, b),
                Bars.member("BC", MemberEnd.PINNED, MemberEnd.PINNED, b, c)),
            List.of(Bars.clamp(a), Bars.hold(b, Freedom.SHIFT_Z), Bars.clamp(c)));

    MechanismException found = mechanism(frame);

    assertThat(found.node()).isEqualTo(b);
    assertThat(found.freedom()).isIn(Freedom.SHIFT_X, Freedom.SHIFT_Y);
  }

  @Test
  void aNodeThatNothingTouchesIsNamed() {
    Node a = Bars.node("A", 0, 0, 0);
    Node b = Bars.node("B", 1_500, 0, 0);
    Node lost = Bars.node("P9", 0, 500, 0);
    Frame frame =
        new Frame(List.of(a, b, lost), List.of(Bars.member("beam", a, b)), List.of(Bars.clamp(a)));

    assertThat(mechanism(frame))
        .hasMessage(
            "Node P9 belongs to no member and can move along X: put it on a member, or leave it"
                + " out.");
    Frame held =
        new Frame(
            List.of(a, b, lost),
            List.of(Bars.member("beam", a, b)),
            List.of(Bars.clamp(a), Bars.clamp(lost)));
    assertThat(new FrameAnalysis(held).unknowns()).isEqualTo(6);
  }

  @Test
  void twoNodesAtOnePlaceAreRefused() {
    Node a = Bars.node("A", 1_000, 0, 0);
    Node b = Bars.node("B", 1_000, 0, 0);
    Frame frame =
        new Frame(List.of(a, b), List.of(Bars.member("stub", a, b)), List.of(Bars.clamp(a)));

    assertThatThrownBy(() -> new FrameAnalysis(frame))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "Member stub has no length between node A and node B: both ends stand at (1000.0, 0.0,"
                + " 0.0) mm. Move one of the nodes, or leave one of them out.");
  }

  @Test
  void aNearMechanismIsOne() {
    // A knee of 1e-7 rad between two pinned bars holds a load only by moving far.
    Node a = Bars.node("A", 0, 0, 0);
    Node b = Bars.node("B", 1_000, 0, 1e-4);
    Node c = Bars.node("C", 2_000, 0, 0);
    Frame frame =
        new Frame(
            List.of(a, b, c),
            List.of(
                Bars.member("AB", MemberEnd.PINNED, MemberEnd.PINNED, a, b),
                Bars.member("BC", MemberEnd.PINNED, MemberEnd.PINNED, b, c)),
            List.of(Bars.clamp(a), Bars.hold(b, Freedom.SHIFT_Y), Bars.clamp(c)));

    MechanismException found = mechanism(frame);

    assertThat(found.node()).isEqualTo(b);
    assertThat(found.freedom()).isEqualTo(Freedom.SHIFT_Z);
  }

  @Test
  void aLongCantileverOfManyPiecesIsNone() {
    List<Node> nodes = new ArrayList<>();
    for (int i = 0; i <= 500; i++) {
      nodes.add(Bars.node("N" + i, 40 * i, 30 * i, 20 * i));
    }
    Member member = Bars.member("arm", nodes.toArray(Node[]::new));
    Frame frame = new Frame(nodes, List.of(member), List.of(Bars.clamp(nodes.get(0))));

    assertThat(new FrameAnalysis(frame).leastPivotRatio())
        .isGreaterThan(10 * FrameAnalysis.LEAST_PIVOT_RATIO);
  }

  @Test
  void aTurnThatNothingResistsIsHeldAndReported() {
    Truss truss = new Truss();
    FrameAnalysis analysis = new FrameAnalysis(truss.frame);

    assertThat(analysis.idleFreedoms())
        .as("three bars loose at the top: it may turn about every axis")
        .hasSize(3)
        .allMatch(idle -> idle.node().equals(truss.top));
    CaseResult result =
        analysis
            .solve(List.of(Bars.nodal(Bars.force(truss.top, new Vector(100, 200, -900)))))
            .results()
            .get(0);
    assertThat(result.turn(truss.top)).isEqualTo(Vector.ZERO);
    assertThat(result.equilibrium().nodeResidual()).isLessThan(1e-13);
  }

  @Test
  void aMomentOnSuchATurnIsRefused() {
    Truss truss = new Truss();
    FrameAnalysis analysis = new FrameAnalysis(truss.frame);
    NodalLoad moment = new NodalLoad(truss.top, Vector.ZERO, new Vector(0, 5_000, 0), "test");

    assertThatThrownBy(() -> analysis.solve(List.of(Bars.nodal(moment))))
        .isInstanceOf(MechanismException.class)
        .hasMessage(
            "Node T can turn about Y under case case: a moment of 5000 N·mm acts on it, but every"
                + " member end there is pinned. Make one of them rigid.");
  }

  @Test
  void anIdleTurnMayBeAskew() {
    // Both bars hold T against turning about their own axes; only the normal of their plane is
    // idle.
    Node a = Bars.node("A", 1_000, 0, 0);
    Node b = Bars.node("B", 0, 1_000, 0);
    Node top = Bars.node("T", 0, 0, 1_000);
    Frame frame =
        new Frame(
            List.of(a, b, top),
            List.of(
                Bars.member("AT", MemberEnd.RIGID, MemberEnd.PINNED, a, top),
                Bars.member("BT", MemberEnd.RIGID, MemberEnd.PINNED, b, top)),
            List.of(Bars.clamp(a), Bars.clamp(b)));

    FrameAnalysis analysis = new FrameAnalysis(frame);

    assertThat(analysis.idleFreedoms()).hasSize(1);
    Vector normal = new Vector(1, 1, 1).unit();
    assertThat(analysis.idleFreedoms().get(0).axis().cross(normal).norm()).isLessThan(1e-9);
  }

  /** Three bars, loose at the top, clamped at the foot. */
  private static final class Truss {
    private final Node top = Bars.node("T", 0, 0, 2_000);
    private final Frame frame;

    Truss() {
      Node a = Bars.node("A", 1_000, 0, 0);
      Node b = Bars.node("B", -500, 800, 0);
      Node c = Bars.node("C", -500, -800, 0);
      frame =
          new Frame(
              List.of(a, b, c, top),
              List.of(
                  Bars.member("AT", MemberEnd.RIGID, LOOSE, a, top),
                  Bars.member("BT", MemberEnd.RIGID, LOOSE, b, top),
                  Bars.member("CT", MemberEnd.RIGID, LOOSE, c, top)),
              List.of(Bars.clamp(a), Bars.clamp(b), Bars.clamp(c)));
    }
  }
}
