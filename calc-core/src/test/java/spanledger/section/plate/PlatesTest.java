package spanledger.section.plate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import spanledger.section.outline.Outline;
import spanledger.section.outline.Point;
import spanledger.section.outline.Ring;
import spanledger.section.outline.RoundedPolygon;
import spanledger.section.outline.Similarity;

/** The plates that an engineer would name by eye. */
class PlatesTest {

  @Test
  void channelWithFillets() {
    Plates plates = Plates.of(channel());
    assertThat(plates.isSure()).as(plates.toString()).isTrue();
    assertThat(kinds(plates, PlateKind.OUTSTAND)).hasSize(2);
    assertThat(kinds(plates, PlateKind.INTERNAL)).hasSize(1);
    // Clear of the fillets of 4: flanges 40 − 3 − 4, web 80 − 2·(3 + 4).
    assertThat(kinds(plates, PlateKind.OUTSTAND))
        .allSatisfy(
            flange -> {
              assertThat(flange.width()).isCloseTo(33, Offset.offset(1e-9));
              assertThat(flange.thickness()).isCloseTo(3, Offset.offset(1e-9));
              assertThat(flange.end().y()).isCloseTo(40, Offset.offset(1e-9));
            });
    assertThat(plates.webSlenderness()).isCloseTo(66 / 3.0, Offset.offset(1e-9));
    assertThat(plates.innerFlangeSlenderness()).isZero();
    assertThat(plates.outstandSlenderness()).isCloseTo(11, Offset.offset(1e-9));
  }

  /** The long leg holds the short one; whether a lip of 6 holds its other edge is not for sure. */
  @Test
  void lipAtTheLegOfAnAngleIsUnsure() {
    Plates plates =
        Plates.of(Outline.of(Ring.polygon(0, 0, 30, 0, 30, 8, 28, 8, 28, 2, 2, 2, 2, 60, 0, 60)));
    assertThat(plates.isSure()).isFalse();
    assertThat(kinds(plates, PlateKind.STIFFENED_OUTSTAND)).hasSize(1);
    assertThat(kinds(plates, PlateKind.OUTSTAND)).hasSize(2);
  }

  @Test
  void recognitionTurnsWithTheOutline() {
    Plates plates = Plates.of(channel().moved(Similarity.rotation(0.4)));
    assertThat(plates.plates()).hasSize(3);
    assertThat(plates.outstandSlenderness()).isCloseTo(11, Offset.offset(1e-9));
  }

  @Test
  void iSection() {
    Plates plates =
        Plates.of(
            Outline.of(
                Ring.polygon(
                    0, 0, 60, 0, 60, 4, 32, 4, 32, 96, 60, 96, 60, 100, 0, 100, 0, 96, 28, 96, 28,
                    4, 0, 4)));
    assertThat(plates.isSure()).as(plates.toString()).isTrue();
    assertThat(kinds(plates, PlateKind.OUTSTAND)).hasSize(4);
    assertThat(plates.outstandSlenderness()).isCloseTo(28 / 4.0, Offset.offset(1e-9));
    assertThat(plates.webSlenderness()).isCloseTo(92 / 4.0, Offset.offset(1e-9));
  }

  @Test
  void hollowSectionWithRoundedCorners() {
    Plates plates =
        Plates.of(
            Outline.of(
                new RoundedPolygon()
                    .corner(0, 0, 5)
                    .corner(80, 0, 5)
                    .corner(80, 50, 5)
                    .corner(0, 50, 5)
                    .close(),
                new RoundedPolygon()
                    .corner(3, 3, 2)
                    .corner(77, 3, 2)
                    .corner(77, 47, 2)
                    .corner(3, 47, 2)
                    .close()));
    assertThat(plates.isSure()).as(plates.toString()).isTrue();
    assertThat(kinds(plates, PlateKind.INTERNAL)).hasSize(4);
    assertThat(plates.innerFlangeSlenderness()).isCloseTo(70 / 3.0, Offset.offset(1e-9));
    assertThat(plates.webSlenderness()).isCloseTo(40 / 3.0, Offset.offset(1e-9));
  }

  @Test
  void roundTube() {
    Plates plates =
        Plates.of(
            Outline.of(Ring.circle(new Point(0, 0), 24.15), Ring.circle(new Point(0, 0), 20.15)));
    assertThat(plates.plates()).hasSize(1);
    assertThat(plates.roundSlenderness()).isCloseTo(48.3 / 4, Offset.offset(1e-9));
    assertThat(plates.isSure()).as(plates.toString()).isTrue();
  }

  @Test
  void twoCellsShareAWeb() {
    Plates plates =
        Plates.of(
            Outline.of(
                Ring.polygon(0, 0, 100, 0, 100, 40, 0, 40),
                Ring.polygon(3, 3, 48, 3, 48, 37, 3, 37),
                Ring.polygon(52, 3, 97, 3, 97, 37, 52, 37)));
    assertThat(kinds(plates, PlateKind.INTERNAL)).hasSize(7);
    assertThat(plates.innerFlangeSlenderness()).isCloseTo(45 / 3.0, Offset.offset(1e-9));
    assertThat(plates.isSure()).as(plates.toString()).isTrue();
  }

  @Test
  void aLipLeavesDoubt() {
    Plates plates =
        Plates.of(
            Outline.of(
                Ring.polygon(
                    0, 0, 50, 0, 50, 14, 47, 14, 47, 3, 3, 3, 3, 97, 47, 97, 47, 86, 50, 86, 50,
                    100, 0, 100)));
    assertThat(kinds(plates, PlateKind.STIFFENED_OUTSTAND)).hasSize(2);
    assertThat(kinds(plates, PlateKind.OUTSTAND)).as("the lips themselves").hasSize(2);
    assertThat(plates.isSure()).isFalse();
    assertThat(kinds(plates, PlateKind.STIFFENED_OUTSTAND).get(0).certainty().words())
        .isEqualTo("unsure, because the lip of 11.0 mm may or may not hold its edge");
    // Not counted on until the user says so.
    assertThat(plates.outstandSlenderness()).isCloseTo(44 / 3.0, Offset.offset(1e-9));
  }

  @Test
  void aBulbLeavesDoubt() {
    Plates plates =
        Plates.of(
            Outline.of(
                Ring.polygon(
                    0, 0, 60, 0, 60, 4, 32, 4, 32, 80, 34, 80, 34, 88, 26, 88, 26, 80, 28, 80, 28,
                    4, 0, 4)));
    assertThat(kinds(plates, PlateKind.STIFFENED_OUTSTAND)).hasSize(1);
    assertThat(plates.isSure()).isFalse();
  }

  @Test
  void aSmallRibIsNoSupport() {
    Plates plates =
        Plates.of(
            Outline.of(
                Ring.polygon(0, 0, 90, 0, 90, 50, 0, 50),
                Ring.polygon(3, 3, 44, 3, 44, 10, 46, 10, 46, 3, 87, 3, 87, 47, 3, 47)));
    assertThat(plates.innerFlangeSlenderness()).isCloseTo(84 / 3.0, Offset.offset(1e-9));
    assertThat(plates.isSure()).isFalse();
    assertThat(plates.plates())
        .anySatisfy(p -> assertThat(p.certainty().words()).contains("is not counted as support"));
  }

  @Test
  void aSolidBlockHasNoPlatesAndSaysSo() {
    Plates plates = Plates.of(Outline.of(Ring.polygon(0, 0, 20, 0, 20, 20, 0, 20)));
    assertThat(plates.plates()).isEmpty();
    assertThat(plates.doubts()).isNotEmpty();
  }

  @Test
  void theUserHasTheLastWord() {
    Plates found = Plates.of(channel());
    Plate web = kinds(found, PlateKind.INTERNAL).get(0);
    Plates own =
        found.overriddenBy(
            List.of(
                new Plate(
                    web.name(),
                    PlateKind.INTERNAL,
                    web.start(),
                    web.end(),
                    0,
                    70,
                    2.5,
                    Certainty.sure())));
    assertThat(own.webSlenderness()).isEqualTo(28);
    assertThat(own.plates()).hasSize(3);
  }

  private static Outline channel() {
    return Outline.of(
        new RoundedPolygon()
            .corner(0, 0)
            .corner(40, 0)
            .corner(40, 3)
            .corner(3, 3, 4)
            .corner(3, 77, 4)
            .corner(40, 77)
            .corner(40, 80)
            .corner(0, 80)
            .close());
  }

  private static List<Plate> kinds(Plates plates, PlateKind kind) {
    return plates.plates().stream().filter(plate -> plate.kind() == kind).toList();
  }
}
