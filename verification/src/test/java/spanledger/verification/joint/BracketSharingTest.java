package spanledger.verification.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import spanledger.frame.Vector;
import spanledger.joint.FaceNormal;
import spanledger.joint.JointAxis;
import spanledger.joint.sharing.BoltPlace;
import spanledger.joint.sharing.BracketShares;
import spanledger.joint.sharing.BracketSharing;
import spanledger.joint.sharing.ContactPoint;
import spanledger.joint.sharing.FaceForces;
import spanledger.joint.sharing.JointGeometry;
import spanledger.joint.sharing.PlacedFace;
import spanledger.joint.sharing.Softening;
import spanledger.joint.sharing.UnresistedFaceException;
import spanledger.joint.stiffness.JointStiffness;

/** Brackets side by side against closed forms of statics and of springs. */
class BracketSharingTest {

  /** Of forces and moments; the balance leaves about 1e-13. */
  private static final double EXACT = 1e-9;

  private static final FaceNormal U = new FaceNormal(JointAxis.U, true);
  private static final FaceNormal W = new FaceNormal(JointAxis.W, true);

  /** One bolt, pulled by k, that presses on its own place by c: a hinge. */
  private static JointGeometry hinge(double pull, double press, double shear) {
    return new JointGeometry(
        List.of(new BoltPlace("bolt", 0, 0, shear, shear, pull)),
        List.of(),
        List.of(new ContactPoint("seat", 0, 0, press)));
  }

  private static PlacedFace at(JointGeometry geometry, FaceNormal normal, double u, double w) {
    return new PlacedFace(geometry, normal, new Vector(u, 0, w));
  }

  private static BracketSharing joint(List<List<PlacedFace>> brackets) {
    return new BracketSharing(brackets, Softening.NONE);
  }

  /**
   * Hinges a = 70 mm above and below the member end under a moment M about v: a pair of forces
   * M/(2a), pulling above, none bent by itself. The end turns by the stretch of one and the yield
   * of the other over their distance: S = (2a)²/(1/k + 1/c).
   */
  @Test
  void hingesAboveAndBelowMakeAPairOfForces() {
    double arm = 70;
    double moment = 2.8e6;
    BracketSharing joint =
        joint(
            List.of(
                List.of(at(hinge(40_000, 90_000, 5_000), U, 0, -arm)),
                List.of(at(hinge(40_000, 90_000, 5_000), U, 0, arm))));

    BracketShares shares = joint.share(new FaceForces(0, 0, 0, 0, moment, 0));
    FaceForces below = shares.brackets().get(0);
    FaceForces above = shares.brackets().get(1);

    double pair = moment / (2 * arm);
    assertThat(above.axial()).isCloseTo(pair, within(EXACT * pair));
    assertThat(below.axial()).isCloseTo(-pair, within(EXACT * pair));
    assertThat(above.momentY()).isCloseTo(pair * arm, within(EXACT * moment));
    assertThat(below.momentY()).isCloseTo(pair * arm, within(EXACT * moment));
    double stiffness = 4 * arm * arm / (1 / 40_000.0 + 1 / 90_000.0);
    assertThat(JointStiffness.of(joint, 1).about().get(1).orElseThrow().positive())
        .isCloseTo(stiffness, within(EXACT * stiffness));
  }

  /** The same hinges hold a torsion by shears ±T/(2a), which no single one of them could hold. */
  @Test
  void hingesTogetherHoldATorsionThatNoneHoldsAlone() {
    PlacedFace below = at(hinge(40_000, 90_000, 5_000), U, 0, -70);
    PlacedFace above = at(hinge(40_000, 90_000, 5_000), U, 0, 70);
    FaceForces torsion = new FaceForces(0, 0, 0, 1.4e5, 0, 0);

    BracketShares shares = joint(List.of(List.of(below), List.of(above))).share(torsion);

    assertThat(shares.brackets().get(0).shearY()).isCloseTo(1000, within(EXACT * 1000));
    assertThat(shares.brackets().get(1).shearY()).isCloseTo(-1000, within(EXACT * 1000));
    assertThatThrownBy(() -> joint(List.of(List.of(above))).share(torsion))
        .isInstanceOf(UnresistedFaceException.class)
        .hasMessageContaining("a moment about u");
  }

  /** Springs beside each other at one place share by their stiffness, 3 to 5 and 4 to 1. */
  @Test
  void springsBesideEachOtherShareByTheirStiffness() {
    BracketSharing joint =
        joint(
            List.of(
                List.of(at(hinge(40_000, 30_000, 3_000), U, 0, 0)),
                List.of(at(hinge(10_000, 90_000, 5_000), U, 0, 0))));

    BracketShares pulled = joint.share(new FaceForces(1000, 0, 800, 0, 0, 0));
    BracketShares pressed = joint.share(new FaceForces(-1200, 0, 0, 0, 0, 0));

    assertThat(pulled.brackets().get(0).axial()).isCloseTo(800, within(EXACT * 1000));
    assertThat(pulled.brackets().get(0).shearZ()).isCloseTo(300, within(EXACT * 1000));
    assertThat(pulled.brackets().get(1).axial()).isCloseTo(200, within(EXACT * 1000));
    assertThat(pulled.brackets().get(1).shearZ()).isCloseTo(500, within(EXACT * 1000));
    assertThat(pressed.brackets().get(0).axial()).isCloseTo(-300, within(EXACT * 1000));
    JointStiffness all = JointStiffness.of(joint, 3);
    assertThat(all.along().get(0).orElseThrow().positive())
        .isCloseTo(50_000, within(EXACT * 50_000));
    assertThat(all.along().get(0).orElseThrow().negative())
        .isCloseTo(120_000, within(EXACT * 120_000));
    assertThat(all.along().get(0).orElseThrow().lower())
        .isCloseTo(50_000 / 3.0, within(EXACT * 50_000));
  }

  /** Two springs k both ways at ±c along the second axis, so that the face turns by 2kc². */
  private static JointGeometry seat(double each, double c, double shear) {
    return new JointGeometry(
        List.of(
            new BoltPlace("upper", 0, c, shear, shear, each),
            new BoltPlace("lower", 0, -c, shear, shear, each)),
        List.of(),
        List.of(new ContactPoint("upper", 0, c, each), new ContactPoint("lower", 0, -c, each)));
  }

  /**
   * A bracket below the member end: a face at h = 100 mm below it on the post (normal u) and one at
   * e = 50 mm along it and g = 40 mm below (normal w, whose first axis is u and second v). By unit
   * forces: a pull along u moves the end by 1/(2k) + h²/(2kc²) at the post, and at the beam by
   * shear, 1/(2s); the moment about v, whose arm is g there, finds no spring of the two at ±c along
   * v but seats at ±d along u that are added.
   */
  @Test
  void armsBetweenFacesSoftenTheirSeries() {
    JointGeometry post = seat(20_000, 30, 4_000);
    JointGeometry beam =
        new JointGeometry(
            List.of(
                new BoltPlace("near", -25, 0, 6_000, 6_000, 15_000),
                new BoltPlace("far", 25, 0, 6_000, 6_000, 15_000)),
            List.of(),
            List.of(
                new ContactPoint("near", -25, 0, 15_000), new ContactPoint("far", 25, 0, 15_000)));
    BracketSharing joint = joint(List.of(List.of(at(post, U, 0, -100), at(beam, W, 50, -40))));

    double along = joint.moved(new FaceForces(1, 0, 0, 0, 0, 0)).x();
    double across = joint.moved(new FaceForces(0, 0, 1, 0, 0, 0)).z();
    double turn = joint.moved(new FaceForces(0, 0, 0, 0, 1, 0)).aboutY();

    double postTurn = 1 / (2 * 20_000.0 * 30 * 30);
    double beamTurn = 1 / (2 * 15_000.0 * 25 * 25);
    double expectedAlong = 1 / 40_000.0 + 100 * 100 * postTurn + 1 / 12_000.0 + 40 * 40 * beamTurn;
    double expectedAcross = 1 / 8_000.0 + 1 / 30_000.0 + 50 * 50 * beamTurn;
    assertThat(along).isCloseTo(expectedAlong, within(EXACT * expectedAlong));
    assertThat(across).isCloseTo(expectedAcross, within(EXACT * expectedAcross));
    assertThat(turn).isCloseTo(postTurn + beamTurn, within(EXACT * (postTurn + beamTurn)));
  }

  /** A bracket that only presses carries nothing of a pull; the other carries all. */
  @Test
  void aBracketThatOnlyPressesCarriesNothingOfAPull() {
    BracketSharing joint =
        joint(
            List.of(
                List.of(at(hinge(0, 90_000, 5_000), U, 0, 0)),
                List.of(at(hinge(10_000, 90_000, 5_000), U, 0, 0))));

    BracketShares shares = joint.share(new FaceForces(1000, 0, 0, 0, 0, 0));

    assertThat(shares.brackets().get(0).axial()).isZero();
    assertThat(shares.brackets().get(1).axial()).isCloseTo(1000, within(EXACT * 1000));
  }

  /**
   * Softer in the faces by 3: a hinge of k off its face and s in it, and one that looks along w. A
   * pull along u is shared k to s/3 in place of k to s.
   */
  @Test
  void whatIsSofterCarriesLess() {
    List<List<PlacedFace>> brackets =
        List.of(
            List.of(at(hinge(12_000, 12_000, 1_000), U, 0, 0)),
            List.of(at(hinge(1_000, 1_000, 6_000), W, 0, 0)));
    FaceForces pull = new FaceForces(1400, 0, 0, 0, 0, 0);

    double known = joint(brackets).share(pull).brackets().get(1).axial();
    double soft =
        new BracketSharing(brackets, new Softening(3, 1)).share(pull).brackets().get(1).axial();

    assertThat(known).isCloseTo(1400 * 6.0 / 18, within(EXACT * 1400));
    assertThat(soft).isCloseTo(1400 * 2.0 / 14, within(EXACT * 1400));
  }
}
