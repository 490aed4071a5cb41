package spanledger.verification.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import spanledger.frame.MemberEnd;
import spanledger.frame.Restraint;
import spanledger.frame.StiffnessBounds.Bound;
import spanledger.frame.Vector;
import spanledger.joint.JointAxis;
import spanledger.joint.sharing.BoltPlace;
import spanledger.joint.sharing.ContactPoint;
import spanledger.joint.sharing.FaceForces;
import spanledger.joint.sharing.InstantaneousCentre;
import spanledger.joint.sharing.JointGeometry;
import spanledger.joint.sharing.JointSharing;
import spanledger.joint.sharing.KeyPlace;
import spanledger.joint.sharing.KeySharing;
import spanledger.joint.sharing.LoadDeformation;
import spanledger.joint.sharing.UnresistedFaceException;
import spanledger.joint.stiffness.BadCurveException;
import spanledger.joint.stiffness.CharacteristicValue;
import spanledger.joint.stiffness.JointStiffness;
import spanledger.joint.stiffness.MomentRotationCurve;
import spanledger.joint.stiffness.MomentRotationCurve.Point;
import spanledger.jointdesign.JointTests;
import spanledger.jointdesign.KnownVariation;
import spanledger.provenance.Source;

/** What a joint cannot carry or a test cannot show is said, not guessed. */
class SharingFaultsTest {

  private static final List<BoltPlace> ROW =
      List.of(BoltPlace.alike("A", -30, 0), BoltPlace.alike("B", 30, 0));

  @Test
  void pressingWithoutAPlaceToPressIsRefused() {
    assertThatThrownBy(() -> share(new FaceForces(-100, 0, 0, 0, 0, 0)))
        .isInstanceOf(UnresistedFaceException.class)
        .hasMessageContaining("an axial force")
        .hasMessageContaining("place where the parts press");
  }

  @Test
  void bendingAboutARowOfBoltsIsRefused() {
    assertThatThrownBy(() -> share(new FaceForces(0, 0, 0, 0, 5000, 0)))
        .isInstanceOf(UnresistedFaceException.class)
        .hasMessageContaining("a moment about y");
  }

  @Test
  void twistOfASingleBoltIsRefusedByBothModels() {
    List<BoltPlace> one = ROW.subList(0, 1);
    FaceForces twist = new FaceForces(0, 0, 0, 700, 0, 0);
    assertThatThrownBy(() -> JointSharing.of(JointGeometry.ofBolts(one), twist))
        .isInstanceOf(UnresistedFaceException.class)
        .hasMessageContaining("a torsion about x");
    List<BoltPlace> inTheMiddle = List.of(BoltPlace.alike("M", 0, 0));
    FaceForces shearAndLittleTwist = new FaceForces(0, 0, 4000, 1, 0, 0);
    assertThatThrownBy(
            () -> JointSharing.of(JointGeometry.ofBolts(inTheMiddle), shearAndLittleTwist))
        .isInstanceOf(UnresistedFaceException.class)
        .hasMessageContaining("resists a torsion about x");
    assertThatThrownBy(
            () -> InstantaneousCentre.of(one, twist, LoadDeformation.STEEL_BOLTS_IN_STEEL))
        .isInstanceOf(UnresistedFaceException.class);
  }

  @Test
  void aContactTooHardToShareWithIsRefused() {
    JointGeometry joint =
        new JointGeometry(ROW, List.of(), List.of(new ContactPoint("heel", 0, -40, 1e9)));
    assertThatThrownBy(() -> JointSharing.of(joint, new FaceForces(0, 0, 0, 0, 5000, 0)))
        .hasMessageContaining("a hundred thousand times");
  }

  @Test
  void nothingToCarryCarriesNothing() {
    var shared = share(new FaceForces(0, 0, 0, 0, 0, 0));
    assertThat(shared.residual()).isZero();
    assertThat(shared.greatestShear()).isZero();
  }

  /**
   * Rounding of 1e-14 N across a slot first moves the key by its clearance of 0.2 mm; no digit of
   * that movement is left for so small a force.
   */
  @Test
  void roundingAcrossAKeyWithClearanceIsCarriedAsNothing() {
    KeyPlace key = new KeyPlace("key", 0, 0, Math.PI / 2, 40, 0.2, 2e5);
    JointGeometry joint = new JointGeometry(ROW, List.of(key), List.of());

    var shared =
        JointSharing.of(
            joint, new FaceForces(0, 1e-14, 900, 0, 0, 0), KeySharing.KEYS_CARRY_ACROSS);

    assertThat(shared.residual()).isLessThan(1e-9);
    assertThat(shared.keys()).allSatisfy(k -> assertThat(k.shearY()).isCloseTo(0, within(1e-9)));
  }

  @Test
  void badCurvesAreNamedWithAllThatIsWrong() {
    List<Point> few = List.of(new Point(0, 0), new Point(0.01, 5e5), new Point(0.005, 7e5));
    assertThatThrownBy(() -> new MomentRotationCurve("B3", few))
        .isInstanceOf(BadCurveException.class)
        .hasMessageContaining("B3")
        .hasMessageContaining("3 readings, but needs at least 5")
        .hasMessageContaining("reading 3 has a rotation of 0.005 rad, not above 0.01 rad");
  }

  @Test
  void unloadingLoopsAndNegativeTestsAreNamed() {
    List<Point> loop = points(0, 4, 8, 5, 9, 12);
    assertThatThrownBy(() -> new MomentRotationCurve("loop", loop))
        .hasMessageContaining("reading 4 has a moment of 500000 N·mm, well below 800000");
    List<Point> negative = points(0, -4, -8, -9, -12);
    assertThatThrownBy(() -> new MomentRotationCurve("hogging", negative))
        .hasMessageContaining("turn the signs");
  }

  @Test
  void aFallingBranchIsLeftOut() {
    MomentRotationCurve curve = new MomentRotationCurve("fell", points(0, 2, 4, 6, 8, 8, 3, 1));
    assertThat(curve.held()).hasSize(6);
    assertThat(curve.greatestMoment()).isEqualTo(8e5);
  }

  @Test
  void twoSpecimensDoNotShowTheirScatter() {
    assertThatThrownBy(() -> CharacteristicValue.quantile(2, false))
        .hasMessageContaining("at least 3");
  }

  /** The frame takes what tests give: play and the lower bound, or less play and the upper. */
  @Test
  void testedJointsHoldMemberEnds() {
    List<JointTests.Measured> specimens = new ArrayList<>();
    for (double stiffness : new double[] {9, 10, 11}) {
      specimens.add(
          new JointTests.Measured("file", specimen("S" + stiffness, 0.004, stiffness * 1e7)));
    }
    JointTests joint =
        JointTests.of(
            "tests",
            specimens,
            new KnownVariation(
                OptionalDouble.of(0.05),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Source.declared("earlier tests")),
            Optional.empty(),
            Source.declared("test report"));

    assertThat(joint.stiffness().value("X_low")).isLessThan(9e7);
    assertThat(joint.stiffness().value("X_high")).isGreaterThan(11e7);
    assertThat(joint.restraint(Bound.LOWER)).isInstanceOf(Restraint.Play.class);
    Restraint.Play play = (Restraint.Play) joint.restraint(Bound.LOWER);
    // 0.004 (1 + 1.645 √(4/3) 0.05): the scatter of the play is known.
    assertThat(play.freePlay()).isCloseTo(0.0043799, org.assertj.core.data.Offset.offset(1e-6));
    assertThat(play.stiffness()).isEqualTo(joint.stiffness().value("X_low"));
  }

  /** Bolts, key and bed of one face become the springs of a member end, with both bounds. */
  @Test
  void facesBecomeMemberEnds() {
    List<BoltPlace> bolts = new ArrayList<>();
    for (int y = -1; y <= 1; y += 2) {
      for (int z = -1; z <= 1; z += 2) {
        bolts.add(new BoltPlace("bolt", 30 * y, 40 * z, 2e4, 2e4, 8e4));
      }
    }
    JointGeometry face =
        new JointGeometry(
            bolts, List.of(), ContactPoint.rectangle("bed", 0, 0, 100, 120, 4, 4, 100));
    JointStiffness one = JointStiffness.of(face, JointStiffness.OTHER).onAxesOf(JointAxis.U);
    JointStiffness two = one.inSeries(one);
    MemberEnd lower = two.memberEnd(Bound.LOWER, Vector.ZERO);
    MemberEnd upper = two.memberEnd(Bound.UPPER, Vector.ZERO);

    // Torsion: Σk r² of four bolts, halved by the second face, and by 3 for the lower bound.
    double torsion = 4 * 2e4 * (30 * 30 + 40 * 40) / 2.0;
    assertThat(stiffness(upper.torsion()))
        .isCloseTo(torsion, org.assertj.core.data.Percentage.withPercentage(1e-7));
    assertThat(stiffness(lower.torsion()))
        .isCloseTo(torsion / 3, org.assertj.core.data.Percentage.withPercentage(1e-7));
    assertThat(stiffness(upper.aboutY())).isGreaterThan(stiffness(lower.aboutY()));
  }

  /** Of normal v the face's order is v, w, u. */
  @Test
  void stiffnessFollowsTheNormalOfTheFace() {
    JointGeometry face =
        new JointGeometry(
            List.of(
                new BoltPlace("a", -30, 0, 1e4, 3e4, 7e4),
                new BoltPlace("b", 30, 0, 1e4, 3e4, 7e4)),
            List.of(),
            ContactPoint.rectangle("bed", 0, 0, 100, 100, 4, 4, 100));
    JointStiffness joint = JointStiffness.of(face, 1).onAxesOf(JointAxis.V);

    assertThat(joint.along().get(2).orElseThrow().lower()).isCloseTo(2e4, by());
    assertThat(joint.along().get(0).orElseThrow().lower()).isCloseTo(6e4, by());
  }

  private static org.assertj.core.data.Percentage by() {
    return org.assertj.core.data.Percentage.withPercentage(1e-7);
  }

  private static double stiffness(Restraint restraint) {
    return ((Restraint.Spring) restraint).stiffness();
  }

  private static spanledger.joint.sharing.SharedForces share(FaceForces forces) {
    return JointSharing.of(JointGeometry.ofBolts(ROW), forces);
  }

  /** Readings at every 2 mrad; moments in 1e5 N·mm. */
  private static List<Point> points(double... moments) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < moments.length; i++) {
      points.add(new Point(0.002 * i, moments[i] * 1e5));
    }
    return points;
  }

  private static MomentRotationCurve specimen(String name, double play, double stiffness) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= 20; i++) {
      points.add(new Point(0.001 * i, Math.max(0, stiffness * (0.001 * i - play))));
    }
    return new MomentRotationCurve(name, points);
  }
}
