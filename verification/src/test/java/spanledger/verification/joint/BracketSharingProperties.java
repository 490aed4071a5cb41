package spanledger.verification.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.assertj.core.data.Offset;
import spanledger.frame.Vector;
import spanledger.joint.FaceNormal;
import spanledger.joint.JointAxis;
import spanledger.joint.sharing.BoltPlace;
import spanledger.joint.sharing.BracketShares;
import spanledger.joint.sharing.BracketSharing;
import spanledger.joint.sharing.ContactPoint;
import spanledger.joint.sharing.FaceForces;
import spanledger.joint.sharing.FaceMovement;
import spanledger.joint.sharing.JointGeometry;
import spanledger.joint.sharing.PlacedFace;
import spanledger.joint.sharing.Softening;

/** What must hold of brackets side by side, whatever they are. */
class BracketSharingProperties {

  /** Of forces, and of moments by 200 mm; the balance leaves about 1e-12. */
  private static final double EQUILIBRIUM = 1e-9;

  private static final double REACH = 200;

  @Property(tries = 60)
  void sharesMakeUpWhatIsShared(@ForAll long seed, @ForAll @IntRange(min = 1, max = 4) int count) {
    Random random = new Random(seed);
    FaceForces forces = forces(random);

    BracketShares shares = sharing(brackets(random, count)).share(forces);

    double[] sum = new double[6];
    for (FaceForces own : shares.brackets()) {
      double[] six = six(own);
      for (int i = 0; i < 6; i++) {
        sum[i] += six[i];
      }
    }
    assertSame(sum, six(forces), size(forces));
  }

  /**
   * The forces of the springs of every face, by its movement and written out apart, are the share
   * of its bracket: faces of a bracket hand on the same forces.
   */
  @Property(tries = 60)
  void everyFaceHandsOnTheShareOfItsBracket(@ForAll long seed) {
    Random random = new Random(seed);
    List<List<PlacedFace>> brackets = brackets(random, 3);
    FaceForces forces = forces(random);

    BracketShares shares = sharing(brackets).share(forces);

    for (int i = 0; i < brackets.size(); i++) {
      for (int j = 0; j < brackets.get(i).size(); j++) {
        double[] carried = carried(brackets.get(i).get(j), shares.faces().get(i).get(j));
        assertSame(carried, six(shares.brackets().get(i)), size(forces));
      }
    }
  }

  /** Another bracket never lets the member end give way more: the work of the forces falls. */
  @Property(tries = 60)
  void anotherBracketNeverLetsTheEndGiveWayMore(@ForAll long seed) {
    Random random = new Random(seed);
    List<List<PlacedFace>> brackets = brackets(random, 3);
    FaceForces forces = forces(random);

    double with = work(forces, sharing(brackets).moved(forces));
    double without = work(forces, sharing(brackets.subList(0, 2)).moved(forces));

    assertThat(with).isPositive().isLessThanOrEqualTo(without * (1 + EQUILIBRIUM));
  }

  /**
   * Brackets that are images of each other in the plane of u and w, under forces in that plane:
   * each carries half, so never more than one alone.
   */
  @Property(tries = 60)
  void imagesShareForcesInTheirPlaneInHalves(@ForAll long seed) {
    Random random = new Random(seed);
    List<PlacedFace> one = brackets(random, 1).get(0);
    List<PlacedFace> image = one.stream().map(BracketSharingProperties::image).toList();
    FaceForces all = forces(random);
    FaceForces forces = new FaceForces(all.axial(), 0, all.shearZ(), 0, all.momentY(), 0);

    BracketShares shares = sharing(List.of(one, image)).share(forces);

    FaceForces first = shares.brackets().get(0);
    FaceForces second = shares.brackets().get(1);
    Offset<Double> close = within(EQUILIBRIUM * size(forces));
    assertThat(first.axial()).isCloseTo(forces.axial() / 2, close);
    assertThat(first.shearZ()).isCloseTo(forces.shearZ() / 2, close);
    assertThat(first.momentY() / REACH).isCloseTo(forces.momentY() / 2 / REACH, close);
    assertThat(second.shearY()).isCloseTo(-first.shearY(), close);
    assertThat(second.momentZ() / REACH).isCloseTo(-first.momentZ() / REACH, close);
  }

  /** Twice the forces, twice the shares: what presses and what pulls does not change. */
  @Property(tries = 30)
  void sharesGrowWithTheForces(@ForAll long seed) {
    Random random = new Random(seed);
    BracketSharing sharing = sharing(brackets(random, 2));
    FaceForces forces = forces(random);

    double[] once = six(sharing.share(forces).brackets().get(0));
    double[] thrice = six(sharing.share(forces.times(3)).brackets().get(0));

    for (int i = 0; i < 6; i++) {
      once[i] *= 3;
    }
    assertSame(thrice, once, 3 * size(forces));
  }

  private static BracketSharing sharing(List<List<PlacedFace>> brackets) {
    return new BracketSharing(brackets, Softening.NONE);
  }

  private static double work(FaceForces forces, FaceMovement movement) {
    return forces.axial() * movement.x()
        + forces.shearY() * movement.y()
        + forces.shearZ() * movement.z()
        + forces.torsion() * movement.aboutX()
        + forces.momentY() * movement.aboutY()
        + forces.momentZ() * movement.aboutZ();
  }

  /** One or two faces, each of which holds all six forces: four bolts on a bed beyond them. */
  private static List<List<PlacedFace>> brackets(Random random, int count) {
    List<List<PlacedFace>> brackets = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      List<PlacedFace> faces = new ArrayList<>();
      for (int j = 0; j <= random.nextInt(2); j++) {
        JointAxis axis = JointAxis.values()[random.nextInt(3)];
        faces.add(
            new PlacedFace(
                face(random),
                new FaceNormal(axis, random.nextBoolean()),
                new Vector(upTo(random, 80), upTo(random, 80), upTo(random, 80))));
      }
      brackets.add(faces);
    }
    return brackets;
  }

  private static double upTo(Random random, double size) {
    return (2 * random.nextDouble() - 1) * size;
  }

  private static JointGeometry face(Random random) {
    List<BoltPlace> bolts = new ArrayList<>();
    for (int y = -1; y <= 1; y += 2) {
      for (int z = -1; z <= 1; z += 2) {
        double shear = 3_000 + 5_000 * random.nextDouble();
        bolts.add(
            new BoltPlace(
                "bolt", 20 * y, 15 * z, shear, shear, 20_000 + 30_000 * random.nextDouble()));
      }
    }
    return new JointGeometry(
        bolts, List.of(), ContactPoint.rectangle("bed", 0, 0, 70, 60, 4, 4, 400));
  }

  private static FaceForces forces(Random random) {
    return new FaceForces(
        upTo(random, 5_000),
        upTo(random, 5_000),
        upTo(random, 5_000),
        upTo(random, 4e5),
        upTo(random, 4e5),
        upTo(random, 4e5));
  }

  /** The image of a face in the plane of u and w. */
  private static PlacedFace image(PlacedFace face) {
    FaceNormal normal = face.normal();
    boolean across = normal.axis() == JointAxis.V;
    FaceNormal turned = across ? new FaceNormal(JointAxis.V, !normal.positive()) : normal;
    List<BoltPlace> bolts = new ArrayList<>();
    for (BoltPlace bolt : face.geometry().bolts()) {
      double[] place = place(normal, turned, bolt.y(), bolt.z());
      bolts.add(
          new BoltPlace(
              bolt.name(),
              place[0],
              place[1],
              bolt.shearStiffnessY(),
              bolt.shearStiffnessZ(),
              bolt.tensionStiffness()));
    }
    List<ContactPoint> contacts = new ArrayList<>();
    for (ContactPoint contact : face.geometry().contacts()) {
      double[] place = place(normal, turned, contact.y(), contact.z());
      contacts.add(new ContactPoint(contact.name(), place[0], place[1], contact.stiffness()));
    }
    Vector origin = face.origin();
    return new PlacedFace(
        new JointGeometry(bolts, List.of(), contacts),
        turned,
        new Vector(origin.x(), -origin.y(), origin.z()));
  }

  private static double[] place(FaceNormal from, FaceNormal to, double y, double z) {
    Vector at = from.first().direction().times(y).plus(from.second().direction().times(z));
    Vector there = new Vector(at.x(), -at.y(), at.z());
    return new double[] {there.dot(to.first().direction()), there.dot(to.second().direction())};
  }

  /** Sums of the forces of all parts of a face about the member end, along u, v, w. */
  private static double[] carried(PlacedFace face, FaceMovement move) {
    Vector x = face.normal().axis().direction().times(face.normal().sign());
    Vector y = face.normal().first().direction();
    Vector z = face.normal().second().direction();
    Vector force = Vector.ZERO;
    Vector moment = Vector.ZERO;
    for (BoltPlace bolt : face.geometry().bolts()) {
      double lift = move.x() + move.aboutY() * bolt.z() - move.aboutZ() * bolt.y();
      Vector own =
          x.times(bolt.tensionStiffness() * Math.max(0, lift))
              .plus(y.times(bolt.shearStiffnessY() * (move.y() - move.aboutX() * bolt.z())))
              .plus(z.times(bolt.shearStiffnessZ() * (move.z() + move.aboutX() * bolt.y())));
      Vector at = face.origin().plus(y.times(bolt.y())).plus(z.times(bolt.z()));
      force = force.plus(own);
      moment = moment.plus(at.cross(own));
    }
    for (ContactPoint contact : face.geometry().contacts()) {
      double lift = move.x() + move.aboutY() * contact.z() - move.aboutZ() * contact.y();
      Vector own = x.times(contact.stiffness() * Math.min(0, lift));
      Vector at = face.origin().plus(y.times(contact.y())).plus(z.times(contact.z()));
      force = force.plus(own);
      moment = moment.plus(at.cross(own));
    }
    return new double[] {force.x(), force.y(), force.z(), moment.x(), moment.y(), moment.z()};
  }

  private static double[] six(FaceForces forces) {
    return new double[] {
      forces.axial(),
      forces.shearY(),
      forces.shearZ(),
      forces.torsion(),
      forces.momentY(),
      forces.momentZ()
    };
  }

  private static double size(FaceForces forces) {
    return forces.greatest(REACH);
  }

  private static void assertSame(double[] found, double[] expected, double size) {
    for (int i = 0; i < 6; i++) {
      double unit = i < 3 ? 1 : REACH;
      assertThat(found[i] / unit).isCloseTo(expected[i] / unit, within(EQUILIBRIUM * size));
    }
  }
}
