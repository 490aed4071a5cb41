package spanledger.picture.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import spanledger.picture.Drawing;
import spanledger.picture.Lettering;
import spanledger.picture.Mark;
import spanledger.picture.PngFile;
import spanledger.picture.Spot;
import spanledger.picture.SvgFile;
import spanledger.picture.Trace;
import spanledger.picture.page.Box;
import spanledger.section.OutlineShape;
import spanledger.section.SectionStudy;
import spanledger.section.mesh.SectionMesh;
import spanledger.section.outline.Outline;
import spanledger.section.outline.Ring;
import spanledger.section.outline.RoundedPolygon;
import spanledger.section.plate.Certainty;
import spanledger.section.plate.Plate;
import spanledger.section.plate.PlateKind;
import spanledger.section.warping.FieldSolver;

class SectionPicturesTest {

  private static final Lettering LETTERING = Lettering.read();

  /** A channel 40 x 80 x 3 with a named slot lip and a short lip that nobody can be sure about. */
  private static Outline channel() {
    return Outline.of(
        new RoundedPolygon()
            .corner(0, 0)
            .corner(40, 0)
            .corner(40, 3)
            .face("keyed-face")
            .corner(3, 3, 4)
            .corner(3, 77, 4)
            .corner(37, 77)
            .corner(37, 71)
            .face("slot-lip")
            .corner(40, 71)
            .corner(40, 80)
            .corner(0, 80)
            .close());
  }

  private static OutlineShape shape() {
    return OutlineShape.of(channel(), FieldSolver.standard());
  }

  private static List<String> words(Drawing drawing) {
    List<String> words = new ArrayList<>();
    for (Mark mark : drawing.marks()) {
      if (mark instanceof Mark.Words some) {
        words.add(some.words());
      }
    }
    return words;
  }

  @Test
  void outlinePictureShowsDimensionsAndCentres() {
    Drawing drawing = OutlinePicture.of(SectionStudy.of(shape()), "sill", LETTERING);

    assertThat(words(drawing)).contains("sill", "40", "80", "t 3", "C", "S", "1", "2");
  }

  @Test
  void platePictureNamesPlatesFacesAndDoubts() {
    Drawing drawing = PlatePicture.of(SectionStudy.of(shape()), "sill", LETTERING);

    assertThat(words(drawing)).contains("P1", "P3 ?", "A", "B");
    assertThat(String.join(" ", words(drawing)))
        .contains("keyed-face, 33 mm long", "slot-lip, 3 mm long", "UNSURE", "stiffened");
  }

  @Test
  void editsOfTheUserAreSaid() {
    OutlineShape shape = shape();
    Plate first = shape.plates().plates().get(0);
    Plate own =
        new Plate(
            first.name(),
            PlateKind.INTERNAL,
            first.start(),
            first.end(),
            0,
            first.width(),
            first.thickness(),
            Certainty.sure());
    OutlineShape edited =
        shape.withPlates(shape.plates().overriddenBy(List.of(own)).without(List.of("P2")));
    Drawing drawing = PlatePicture.of(SectionStudy.of(edited), "sill", LETTERING);

    assertThat(String.join(" ", words(drawing)))
        .contains("changed by the user", "P2: removed by the user");
  }

  /** Labels are boxes; no two may meet. The widths are those of the font. */
  @Test
  void labelsDoNotOverlap() {
    OutlineShape shape = shape();
    for (Drawing drawing :
        List.of(
            OutlinePicture.of(SectionStudy.of(shape), "sill", LETTERING),
            PlatePicture.of(SectionStudy.of(shape), "sill", LETTERING),
            FieldPicture.warping(channel(), shape.field(), "sill", LETTERING),
            FieldPicture.torsion(channel(), shape.field(), "sill", LETTERING))) {
      List<Box> boxes = new ArrayList<>();
      for (Mark mark : drawing.marks()) {
        if (mark instanceof Mark.Words words && words.turn() == 0) {
          double width = LETTERING.width(words.words(), words.size());
          boxes.add(Box.ofWords(words.at(), width, words.size(), words.anchor()).grown(-1));
        }
      }
      for (int i = 0; i < boxes.size(); i++) {
        for (int j = i + 1; j < boxes.size(); j++) {
          assertThat(boxes.get(i).meets(boxes.get(j)))
              .as("%s: %s and %s", drawing.title(), boxes.get(i), boxes.get(j))
              .isFalse();
        }
      }
    }
  }

  @Test
  void sameSectionSameBytes() {
    Drawing one = FieldPicture.torsion(channel(), shape().field(), "sill", LETTERING);
    Drawing two = FieldPicture.torsion(channel(), shape().field(), "sill", LETTERING);

    assertThat(SvgFile.of(one)).isEqualTo(SvgFile.of(two));
    assertThat(PngFile.of(one, LETTERING, 1)).isEqualTo(PngFile.of(two, LETTERING, 1));
  }

  /** Bands must be told apart in grey: each is brighter than the one below. */
  @Test
  void bandsGetLighterInGrey() {
    Drawing drawing = FieldPicture.warping(channel(), shape().field(), "sill", LETTERING);
    List<Double> greys = new ArrayList<>();
    for (Mark mark : drawing.marks()) {
      if (mark instanceof Mark.Shape shape && shape.fill().isPresent() && shape.pen().isEmpty()) {
        greys.add(shape.fill().get().grey());
      }
    }
    // The bands are filled from the lowest up; nothing else is filled without an edge.
    assertThat(greys).hasSizeBetween(5, 11);
    for (int i = 1; i < greys.size(); i++) {
      assertThat(greys.get(i)).isGreaterThan(greys.get(i - 1) + 0.02);
    }
  }

  /**
   * The region of a square 0..10 where y·z ≥ 25: area 100 − 25·(1 + ln 4) = 40.343, by integration
   * of 10 − 25/y from 2.5 to 10. Tolerance: plain triangles cut the curve off by chords.
   */
  @Test
  void contoursEncloseTheRegionAboveALevel() {
    Outline square = Outline.of(Ring.polygon(0, 0, 10, 0, 10, 10, 0, 10));
    SectionMesh mesh = SectionMesh.of(square);
    for (int i = 0; i < 8; i++) {
      boolean[] all = new boolean[mesh.triangleCount()];
      Arrays.fill(all, true);
      mesh = mesh.refined(all);
    }
    SectionMesh fine = mesh;
    FieldSamples samples = new FieldSamples(fine, 3);
    View view = View.of(List.of(square), List.of(), new Box(0, 0, 2000, 2000));
    double[] values = samples.values(at -> at.of(n -> fine.node(n).y() * fine.node(n).z()));
    Contours.Region region = new Contours(samples, values, view).above(25);

    double area = Math.abs(area(region.rim())) / (view.scale() * view.scale());
    assertThat(area).isCloseTo(100 - 25 * (1 + Math.log(4)), within(0.02));
    assertThat(region.line().moves().size()).isLessThan(region.rim().moves().size());
  }

  private static double area(Trace trace) {
    double twice = 0;
    Spot start = new Spot(0, 0);
    Spot here = start;
    for (Trace.Move move : trace.moves()) {
      Spot next =
          move instanceof Trace.Start s ? s.at() : move instanceof Trace.Line l ? l.to() : start;
      if (move instanceof Trace.Start) {
        start = next;
      } else {
        twice += here.x() * next.y() - next.x() * here.y();
      }
      here = next;
    }
    return twice / 2;
  }
}
