package spanledger.verification.joint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import spanledger.joint.sharing.BoltForce;
import spanledger.joint.sharing.BoltPlace;
import spanledger.joint.sharing.ContactForce;
import spanledger.joint.sharing.ContactPoint;
import spanledger.joint.sharing.FaceForces;
import spanledger.joint.sharing.InstantaneousCentre;
import spanledger.joint.sharing.JointGeometry;
import spanledger.joint.sharing.JointSharing;
import spanledger.joint.sharing.KeyForce;
import spanledger.joint.sharing.KeyPlace;
import spanledger.joint.sharing.KeySharing;
import spanledger.joint.sharing.LoadDeformation;
import spanledger.joint.sharing.MovingFace;
import spanledger.joint.sharing.SharedForces;
import spanledger.joint.sharing.UltimateShear;

/** What must hold of any sharing, whatever the joint. */
class SharingProperties {

  /**
   * Of forces and of moments by the joint's size; the work is in doubles, errors stay near 1e-13.
   */
  private static final double EQUILIBRIUM = 1e-9;

  @Property(tries = 300)
  void whatThePartsCarryIsWhatTheFaceIsGiven(
      @ForAll long seed, @ForAll @IntRange(min = 3, max = 9) int bolts) {
    Random random = new Random(seed);
    JointGeometry joint = joint(random, bolts);
    FaceForces forces = forces(random);

    for (KeySharing model : KeySharing.values()) {
      SharedForces shared = JointSharing.of(joint, forces, model);

      assertThat(new MovingFace(joint, model).under(forces)).isEqualTo(shared.movement());
      assertThat(shared.residual()).isLessThan(EQUILIBRIUM);
      assertBalanced(shared);
      assertThat(shared.bolts()).allMatch(bolt -> bolt.tension() >= 0);
      assertThat(shared.contacts()).allMatch(contact -> contact.force() >= 0);
    }
  }

  @Property(tries = 200)
  void anAddedBoltNeverRaisesTheGreatestForceOfASymmetricGroup(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 6) int pairs) {
    Random random = new Random(seed);
    List<BoltPlace> bolts = new ArrayList<>(symmetric(random, pairs));
    FaceForces concentric =
        new FaceForces(random.nextDouble(), random.nextGaussian(), random.nextGaussian(), 0, 0, 0);
    FaceForces twist = new FaceForces(0, 0, 0, random.nextGaussian() * 100, 0, 0);
    SharedForces fewPulled = JointSharing.of(JointGeometry.ofBolts(bolts), concentric);
    SharedForces fewTwisted = JointSharing.of(JointGeometry.ofBolts(bolts), twist);
    bolts.add(BoltPlace.alike("added", 0, 0));
    SharedForces morePulled = JointSharing.of(JointGeometry.ofBolts(bolts), concentric);
    SharedForces moreTwisted = JointSharing.of(JointGeometry.ofBolts(bolts), twist);

    assertThat(morePulled.greatestShear()).isLessThanOrEqualTo(fewPulled.greatestShear());
    assertThat(morePulled.greatestTension()).isLessThanOrEqualTo(fewPulled.greatestTension());
    assertThat(moreTwisted.greatestShear())
        .isLessThanOrEqualTo(fewTwisted.greatestShear() * (1 + EQUILIBRIUM));
  }

  /** A mirror image of joint and forces gives the mirror image of what the parts carry. */
  @Property(tries = 200)
  void aMirroredJointGivesMirroredForces(@ForAll long seed) {
    Random random = new Random(seed);
    JointGeometry joint = joint(random, 5);
    FaceForces forces = forces(random);
    SharedForces shared = JointSharing.of(joint, forces);
    SharedForces mirrored = JointSharing.of(mirror(joint), mirror(forces));

    for (int i = 0; i < joint.bolts().size(); i++) {
      BoltForce given = shared.bolts().get(i);
      BoltForce image = mirrored.bolts().get(i);
      double scale = shared.greatestShear() + shared.greatestTension();
      assertThat(image.shearY()).isCloseTo(-given.shearY(), by(scale));
      assertThat(image.shearZ()).isCloseTo(given.shearZ(), by(scale));
      assertThat(image.tension()).isCloseTo(given.tension(), by(scale));
    }
    for (int i = 0; i < joint.keys().size(); i++) {
      double scale = shared.keys().stream().mapToDouble(KeyForce::bearingForce).max().orElse(0);
      assertThat(mirrored.keys().get(i).shearY())
          .isCloseTo(-shared.keys().get(i).shearY(), by(scale + shared.greatestShear()));
    }
  }

  /** Of linear parts: what two sets of forces cause together is the sum of what each causes. */
  @Property(tries = 100)
  void shearsOfBoltsAdd(@ForAll long seed) {
    Random random = new Random(seed);
    JointGeometry joint = JointGeometry.ofBolts(bolts(random, 6));
    FaceForces first = inFace(random);
    FaceForces second = inFace(random);
    FaceForces both =
        new FaceForces(
            0,
            first.shearY() + second.shearY(),
            first.shearZ() + second.shearZ(),
            first.torsion() + second.torsion(),
            0,
            0);
    for (int i = 0; i < 6; i++) {
      double sum =
          JointSharing.of(joint, first).bolts().get(i).shearY()
              + JointSharing.of(joint, second).bolts().get(i).shearY();
      SharedForces together = JointSharing.of(joint, both);
      assertThat(together.bolts().get(i).shearY())
          .isCloseTo(sum, by(together.greatestShear() + Math.abs(sum)));
    }
  }

  /**
   * Whatever the group and the forces, the shears by the law balance, and none is above the law.
   */
  @Property(tries = 150)
  void shearsAboutTheInstantaneousCentreBalance(
      @ForAll long seed, @ForAll @IntRange(min = 2, max = 10) int bolts) {
    Random random = new Random(seed);
    List<BoltPlace> group = bolts(random, bolts);
    FaceForces forces = inFace(random);
    UltimateShear found =
        InstantaneousCentre.of(group, forces, LoadDeformation.STEEL_BOLTS_IN_STEEL);

    assertThat(found.residual()).isLessThan(EQUILIBRIUM);
    double most = found.bolts().stream().mapToDouble(BoltForce::shear).max().orElseThrow();
    assertThat(most).isLessThan(found.requiredStrength());
  }

  /** Where the reference point lies is a matter of writing, not of mechanics. */
  @Property(tries = 100)
  void theReferencePointDoesNotMatter(@ForAll long seed) {
    Random random = new Random(seed);
    JointGeometry joint = joint(random, 4);
    FaceForces forces = forces(random);
    double y = random.nextGaussian() * 30;
    double z = random.nextGaussian() * 30;
    SharedForces here = JointSharing.of(joint, forces);
    SharedForces there = JointSharing.of(shifted(joint, -y, -z), forces.about(0, y, z));

    for (int i = 0; i < joint.bolts().size(); i++) {
      double scale = here.greatestShear() + here.greatestTension();
      assertThat(there.bolts().get(i).shearY()).isCloseTo(here.bolts().get(i).shearY(), by(scale));
      assertThat(there.bolts().get(i).tension())
          .isCloseTo(here.bolts().get(i).tension(), by(scale));
    }
  }

  private static org.assertj.core.data.Offset<Double> by(double scale) {
    return org.assertj.core.data.Offset.offset(1e-7 * (scale + 1e-9));
  }

  /** Adds up by vectors, not with the code's own sums. */
  private static void assertBalanced(SharedForces shared) {
    double[] sum = new double[6];
    double size = 0;
    for (BoltForce bolt : shared.bolts()) {
      size +=
          put(sum, bolt.bolt().y(), bolt.bolt().z(), bolt.tension(), bolt.shearY(), bolt.shearZ());
    }
    for (KeyForce key : shared.keys()) {
      double arm = key.key().length() / Math.sqrt(12);
      double c = Math.cos(key.key().slotAngle());
      double s = Math.sin(key.key().slotAngle());
      size +=
          put(
              sum,
              key.key().y() - arm * c,
              key.key().z() - arm * s,
              0,
              -s * key.first(),
              c * key.first());
      size +=
          put(
              sum,
              key.key().y() + arm * c,
              key.key().z() + arm * s,
              0,
              -s * key.second(),
              c * key.second());
    }
    for (ContactForce contact : shared.contacts()) {
      size += put(sum, contact.contact().y(), contact.contact().z(), -contact.force(), 0, 0);
    }
    FaceForces given = shared.forces();
    double[] expected = {
      given.axial(),
      given.shearY(),
      given.shearZ(),
      given.torsion(),
      given.momentY(),
      given.momentZ()
    };
    for (int i = 0; i < 6; i++) {
      double scale = i < 3 ? size : size * 100;
      assertThat(sum[i] - expected[i])
          .isCloseTo(0, org.assertj.core.data.Offset.offset(EQUILIBRIUM * scale));
    }
  }

  private static double put(double[] sum, double y, double z, double fx, double fy, double fz) {
    sum[0] += fx;
    sum[1] += fy;
    sum[2] += fz;
    sum[3] += y * fz - z * fy;
    sum[4] += z * fx;
    sum[5] += -y * fx;
    return Math.abs(fx) + Math.abs(fy) + Math.abs(fz);
  }

  private static JointGeometry joint(Random random, int bolts) {
    List<KeyPlace> keys = new ArrayList<>();
    for (int i = 0; i < 1 + random.nextInt(3); i++) {
      keys.add(
          new KeyPlace(
              "key " + i,
              random.nextGaussian() * 30,
              random.nextGaussian() * 30,
              random.nextBoolean() ? 0 : random.nextDouble() * Math.PI,
              20 + random.nextDouble() * 40,
              random.nextBoolean() ? 0 : random.nextDouble() * 0.2,
              1e5 * (0.1 + random.nextDouble())));
    }
    return new JointGeometry(
        bolts(random, bolts),
        keys,
        ContactPoint.rectangle("plate", 0, 0, 160, 160, 4, 4, 5 + 50 * random.nextDouble()));
  }

  private static List<BoltPlace> bolts(Random random, int count) {
    List<BoltPlace> bolts = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      // Three bolts in a triangle hold any pull; the others stand anywhere.
      double y = i < 3 ? 60 * Math.cos(i * 2.1) : random.nextDouble() * 120 - 60;
      double z = i < 3 ? 60 * Math.sin(i * 2.1) : random.nextDouble() * 120 - 60;
      bolts.add(
          new BoltPlace(
              "bolt " + i,
              y,
              z,
              1e4 * (0.1 + random.nextDouble()),
              1e4 * (0.1 + random.nextDouble()),
              1e5 * (0.1 + random.nextDouble())));
    }
    return bolts;
  }

  private static List<BoltPlace> symmetric(Random random, int pairs) {
    List<BoltPlace> bolts = new ArrayList<>();
    for (int i = 0; i < pairs; i++) {
      double y = 10 + random.nextDouble() * 50;
      double z = random.nextDouble() * 50;
      bolts.add(BoltPlace.alike("left " + i, -y, -z));
      bolts.add(BoltPlace.alike("right " + i, y, z));
    }
    return bolts;
  }

  private static FaceForces forces(Random random) {
    return new FaceForces(
        random.nextGaussian() * 5000,
        random.nextGaussian() * 5000,
        random.nextGaussian() * 5000,
        random.nextGaussian() * 2e5,
        random.nextGaussian() * 5e4,
        random.nextGaussian() * 5e4);
  }

  private static FaceForces inFace(Random random) {
    return new FaceForces(
        0,
        random.nextGaussian() * 5000,
        random.nextGaussian() * 5000,
        random.nextGaussian() * 2e5,
        0,
        0);
  }

  private static JointGeometry mirror(JointGeometry joint) {
    return new JointGeometry(
        joint.bolts().stream()
            .map(
                b ->
                    new BoltPlace(
                        b.name(),
                        -b.y(),
                        b.z(),
                        b.shearStiffnessY(),
                        b.shearStiffnessZ(),
                        b.tensionStiffness()))
            .toList(),
        joint.keys().stream()
            .map(
                k ->
                    new KeyPlace(
                        k.name(),
                        -k.y(),
                        k.z(),
                        Math.PI - k.slotAngle(),
                        k.length(),
                        k.clearance(),
                        k.stiffness()))
            .toList(),
        joint.contacts().stream()
            .map(c -> new ContactPoint(c.name(), -c.y(), c.z(), c.stiffness()))
            .toList());
  }

  private static FaceForces mirror(FaceForces f) {
    return new FaceForces(
        f.axial(), -f.shearY(), f.shearZ(), -f.torsion(), f.momentY(), -f.momentZ());
  }

  private static JointGeometry shifted(JointGeometry joint, double y, double z) {
    return new JointGeometry(
        joint.bolts().stream()
            .map(
                b ->
                    new BoltPlace(
                        b.name(),
                        b.y() + y,
                        b.z() + z,
                        b.shearStiffnessY(),
                        b.shearStiffnessZ(),
                        b.tensionStiffness()))
            .toList(),
        joint.keys().stream()
            .map(
                k ->
                    new KeyPlace(
                        k.name(),
                        k.y() + y,
                        k.z() + z,
                        k.slotAngle(),
                        k.length(),
                        k.clearance(),
                        k.stiffness()))
            .toList(),
        joint.contacts().stream()
            .map(c -> new ContactPoint(c.name(), c.y() + y, c.z() + z, c.stiffness()))
            .toList());
  }
}
