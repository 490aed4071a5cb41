package spanledger.verification.joint;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static spanledger.verification.joint.Parts.GIVEN;

import org.junit.jupiter.api.Test;
import spanledger.provenance.Source;
import spanledger.resistance.joint.Bolt;
import spanledger.resistance.joint.Friction;
import spanledger.resistance.joint.LipHold;
import spanledger.resistance.joint.Metal;
import spanledger.resistance.joint.PlateLeg;
import spanledger.resistance.joint.TStub;

/** Parts that cannot be are refused, with what was found and what was expected. */
class RefusedPartsTest {

  private static final Metal METAL = Parts.metal(160, 195);

  @Test
  void frictionFromMemory() {
    assertThatThrownBy(() -> new Friction(0.2, Source.fromMemory("A handbook", "friction")))
        .hasMessageContaining("from memory")
        .hasMessageContaining("declare it with its test");
  }

  @Test
  void frictionAboveOne() {
    assertThatThrownBy(() -> new Friction(1.2, GIVEN)).hasMessageContaining("1.2");
  }

  @Test
  void holeCutByAnEdge() {
    assertThatThrownBy(() -> Parts.hole(METAL, 5, 18, 25, 4, 0))
        .hasMessageContaining("hole")
        .hasMessageContaining("e2 4.0 mm")
        .hasMessageContaining("further than half of the hole");
  }

  @Test
  void holesThatOverlap() {
    assertThatThrownBy(() -> Parts.hole(METAL, 5, 18, 8, 15, 0)).hasMessageContaining("p1 8.0 mm");
  }

  @Test
  void headThatOverlapsMoreThanTheLip() {
    assertThatThrownBy(() -> new LipHold("lip", METAL, 3, 4, 6, 14, 5, 5, 2, GIVEN))
        .hasMessageContaining("reaches 4.0 mm")
        .hasMessageContaining("overlaps it by 6.0 mm");
  }

  @Test
  void legThatIsAllHoles() {
    assertThatThrownBy(() -> new PlateLeg("leg", METAL, 5, 18, 18, GIVEN))
        .hasMessageContaining("holes that leave metal");
  }

  @Test
  void boltAtItsRoot() {
    assertThatThrownBy(() -> new TStub("leg", METAL, 5, 0, 12, 20, 20, GIVEN))
        .hasMessageContaining("leg");
  }

  @Test
  void metalWeakerAtRuptureThanAtYielding() {
    assertThatThrownBy(() -> Parts.metal(250, 200)).hasMessageContaining("250.0 MPa");
  }

  /** ISO 898-1, strengths of 8.8 differ above M16. */
  @Test
  void boltLargerThanItsGradeHoldsFor() {
    var size = Parts.BOLTS.size("M16").orElseThrow();
    var small = Parts.BOLTS.grade("8.8").orElseThrow();
    var grade =
        new spanledger.bolt.BoltGrade(
            "8.8", 800, 640, false, 12, small.source(), small.proofSource(), "");
    assertThatThrownBy(() -> Bolt.hexagon(size, grade)).hasMessageContaining("hold up to 12.0 mm");
  }
}
