package spanledger.verification.jointdesign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import spanledger.frame.Vector;
import spanledger.joint.BoltHead;
import spanledger.joint.FaceBolts;
import spanledger.joint.FaceNormal;
import spanledger.joint.FacePlace;
import spanledger.joint.JointAxis;
import spanledger.joint.JointFace;
import spanledger.joint.Ply;
import spanledger.joint.PlySide;
import spanledger.jointdesign.PlyStack;
import spanledger.material.Alloy;
import spanledger.material.BucklingClass;
import spanledger.material.ProductForm;
import spanledger.material.ThicknessRange;
import spanledger.provenance.Source;
import spanledger.resistance.member.Working;
import spanledger.tables.BoltTables;

/** What plies bear of a bolt's force, for any stack of up to six plies of two parts. */
class PlyStackProperties {

  private static final Source GIVEN = Source.declared("This property");

  /** The parts of each side add to all of the force; a fork of unlike prongs is asked more. */
  @Property(tries = 200)
  void pliesOfOnePartBearAllTogether(
      @ForAll @Size(min = 2, max = 6) List<@DoubleRange(min = 1, max = 12) Double> thicknesses,
      @ForAll @IntRange(min = 1, max = 62) int parts) {
    JointFace face = face(thicknesses, parts);
    if (face.shearPlanes() == 0) {
      return;
    }
    List<Working> shares = PlyStack.of(face, "face", GIVEN).orElseThrow().shares();
    for (PlySide side : PlySide.values()) {
      double all = 0;
      for (int i = 0; i < shares.size(); i++) {
        all += face.plies().get(i).side().orElseThrow() == side ? shares.get(i).value("s_i") : 0;
      }
      if (face.shearPlanes() == 2) {
        assertThat(all).isBetween(1 - 1e-12, 1.5);
      } else {
        assertThat(all).isCloseTo(1, within(1e-12));
      }
    }
  }

  /**
   * Shears of planes, one after the other, balance what plies put on the bolt, on the safe side.
   */
  @Property(tries = 200)
  void noPlaneIsShearedByMoreThanItsNeighboursBear(
      @ForAll @Size(min = 2, max = 6) List<@DoubleRange(min = 1, max = 12) Double> thicknesses,
      @ForAll @IntRange(min = 1, max = 62) int parts) {
    JointFace face = face(thicknesses, parts);
    if (face.shearPlanes() == 0) {
      return;
    }
    List<Working> shares = PlyStack.of(face, "face", GIVEN).orElseThrow().shares();
    double most = Math.max(shares.get(0).value("s_g"), shares.get(shares.size() - 1).value("s_g"));
    double equal = shares.get(0).value("s_e");
    double carried = 0;
    for (int i = 0; i < shares.size(); i++) {
      Working share = shares.get(i);
      double sign = face.plies().get(i).side().orElseThrow() == PlySide.MEMBER ? 1 : -1;
      carried += sign * share.value("s_e") * share.value("s_i") / share.value("s_g");
      assertThat(Math.abs(carried)).isLessThanOrEqualTo(Math.max(most, equal) + 1e-12);
    }
    assertThat(carried).isCloseTo(0, within(1e-12));
  }

  /** Told from the other end, or by the other part, the same plies bear the same. */
  @Property(tries = 100)
  void aStackIsTheSameFromBothEnds(
      @ForAll @Size(min = 2, max = 6) List<@DoubleRange(min = 1, max = 12) Double> thicknesses,
      @ForAll @IntRange(min = 1, max = 62) int parts) {
    JointFace face = face(thicknesses, parts);
    if (face.shearPlanes() == 0) {
      return;
    }
    List<Ply> turned = new ArrayList<>(face.plies());
    Collections.reverse(turned);
    List<Working> one = PlyStack.of(face, "face", GIVEN).orElseThrow().shares();
    List<Working> other = PlyStack.of(face(turned), "face", GIVEN).orElseThrow().shares();
    for (int i = 0; i < one.size(); i++) {
      assertThat(other.get(one.size() - 1 - i).value("s_i"))
          .isCloseTo(one.get(i).value("s_i"), within(1e-12));
    }
  }

  private static JointFace face(List<Double> thicknesses, int parts) {
    List<Ply> plies = new ArrayList<>();
    for (int i = 0; i < thicknesses.size(); i++) {
      plies.add(
          new Ply(
              "ply " + i,
              thicknesses.get(i),
              alloy(),
              11,
              new FacePlace(-40, -40),
              new FacePlace(40, 40),
              Optional.of((parts >> i & 1) == 0 ? PlySide.MEMBER : PlySide.HOLDER)));
    }
    return face(plies);
  }

  private static JointFace face(List<Ply> plies) {
    return new JointFace(
        "face",
        new FaceNormal(JointAxis.U, true),
        Vector.ZERO,
        new FaceBolts(
            BoltTables.standard().size("M10").orElseThrow(),
            BoltTables.standard().grade("A4-70").orElseThrow(),
            new BoltHead.Hexagon(),
            List.of(new FacePlace(0, 0)),
            1,
            true,
            Optional.empty()),
        Optional.empty(),
        plies,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        0);
  }

  static Alloy alloy() {
    return new Alloy(
        "own",
        EnumSet.of(ProductForm.values()[0]),
        new ThicknessRange(0, 100),
        170,
        215,
        BucklingClass.A,
        Optional.empty(),
        OptionalDouble.empty(),
        70_000,
        27_000,
        2.7e-6,
        GIVEN,
        "");
  }
}
