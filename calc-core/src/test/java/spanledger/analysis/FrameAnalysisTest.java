package spanledger.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.Node;
import spanledger.frame.Segment;
import spanledger.frame.Vector;

/** The solver on frames small enough to check by hand; the published cases are in verification. */
class FrameAnalysisTest {

  private static final double LENGTH = 2_000;

  @Test
  void aCantileverBendsAndShears() {
    Node root = Bars.node("A", 0, 0, 0);
    Node tip = Bars.node("B", LENGTH, 0, 0);
    Member arm = Bars.member("arm", root, tip);
    Frame frame = new Frame(List.of(root, tip), List.of(arm), List.of(Bars.clamp(root)));

    CaseResult result = Bars.solve(frame, Bars.nodal(Bars.force(tip, new Vector(0, 300, -500))));

    assertThat(result.shift(tip).z())
        .isCloseTo(
            -500 * Math.pow(LENGTH, 3) / (3 * Bars.E * Bars.IY)
                - 500 * LENGTH / (Bars.G * Bars.AVZ),
            within(1e-10));
    assertThat(result.shift(tip).y())
        .isCloseTo(
            300 * Math.pow(LENGTH, 3) / (3 * Bars.E * Bars.IZ) + 300 * LENGTH / (Bars.G * Bars.AVY),
            within(1e-10));
    assertThat(result.reaction(root).force().minus(new Vector(0, -300, 500)).norm())
        .isLessThan(1e-10);
    assertThat(result.reaction(root).moment().y()).isCloseTo(-500 * LENGTH, within(1e-6));
    assertThat(result.reaction(root).moment().z()).isCloseTo(-300 * LENGTH, within(1e-6));
    assertThat(result.equilibrium().nodeResidual()).isLessThan(1e-14);
    assertThat(result.equilibrium().wholeResidual()).isLessThan(1e-14);
  }

  @Test
  void aClampedBeamHoldsATrapezoid() {
    Node left = Bars.node("A", 0, 0, 0);
    Node right = Bars.node("B", LENGTH, 0, 0);
    Member beam = Bars.member("beam", left, right);
    Frame frame =
        new Frame(
            List.of(left, right), List.of(beam), List.of(Bars.clamp(left), Bars.clamp(right)));
    Segment segment = frame.segments().get(0);

    CaseResult result =
        Bars.solve(frame, Bars.along(Bars.spread(segment, Vector.DOWN, 0, 3, 0, LENGTH)));

    // Triangle rising to w: wL²/30 at its foot, wL²/20 at its head; shear does not change a
    // symmetric beam, but does change this one, so equilibrium is what is checked here.
    assertThat(result.reaction(left).force().z() + result.reaction(right).force().z())
        .isCloseTo(3 * LENGTH / 2, within(1e-9));
    assertThat(result.equilibrium().wholeResidual()).isLessThan(1e-14);
  }
}
