package spanledger.resistance.member;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import spanledger.provenance.Source;
import spanledger.section.OutlineShape;
import spanledger.section.SectionProperties;
import spanledger.section.outline.Extent;
import spanledger.section.outline.PlaneProperties;
import spanledger.section.outline.Point;
import spanledger.section.plate.Certainty;
import spanledger.section.plate.Plate;
import spanledger.section.plate.PlateKind;
import spanledger.section.warping.FieldProperties;

/** What member checks need of an outline. */
final class OutlineMemberSection {

  /** A cell carries torsion if the constant exceeds that of the opened walls by this. */
  private static final double CELL = 3;

  /** Distances from symmetry that do not matter, per depth or width. */
  private static final double LEVEL = 1e-3;

  private static final Source FIELD =
      Source.derived("Outline; shear centre and warping by finite elements");

  private OutlineMemberSection() {}

  static MemberSection of(String name, OutlineShape shape, SectionProperties p) {
    PlaneProperties plane = PlaneProperties.of(shape.outline());
    FieldProperties field = shape.field();
    PrincipalAxes axes = new PrincipalAxes(plane.centroid(), p.principalRotation());
    Extent y = extent(shape, axes, new Point(1, 0));
    Extent z = extent(shape, axes, new Point(0, 1));
    Point shearCentre = axes.of(field.torsion().shearCentre());
    Point cubic =
        axes.turned(new Point(plane.cubicMoments().alongY(), plane.cubicMoments().alongZ()));
    double ordinate = 0;
    for (int n = 0; n < field.mesh().nodeCount(); n++) {
      ordinate = Math.max(ordinate, Math.abs(field.warping(n)));
    }
    double depth = z.greatest() - z.least();
    double width = y.greatest() - y.least();
    boolean symmetric =
        Math.abs(z.greatest() + z.least()) < LEVEL * depth
            && Math.abs(y.greatest() + y.least()) < LEVEL * width
            && Math.abs(shearCentre.z()) < LEVEL * depth
            && Math.abs(shearCentre.y()) < LEVEL * width;
    return new MemberSection(
        name,
        form(shape, p),
        symmetric,
        p,
        z.greatest(),
        -z.least(),
        y.greatest(),
        -y.least(),
        shearCentre.y(),
        shearCentre.z(),
        shearCentre.y() - cubic.y() / (2 * p.secondMomentZ()),
        shearCentre.z() - cubic.z() / (2 * p.secondMomentY()),
        field.torsion().warpingConstant(),
        ordinate,
        walls(shape, axes),
        doubt(shape),
        FIELD);
  }

  /** How far the outline reaches from the centroid along a principal direction. */
  private static Extent extent(OutlineShape shape, PrincipalAxes axes, Point principal) {
    Point drawn = new PrincipalAxes(new Point(0, 0), -axes.angle()).turned(principal);
    Extent extent = Extent.of(shape.outline().edges(), drawn);
    double centre = axes.centroid().dot(drawn);
    return new Extent(extent.least() - centre, extent.greatest() - centre);
  }

  private static List<Plate> walls(OutlineShape shape, PrincipalAxes axes) {
    List<Plate> walls = new ArrayList<>();
    for (Plate plate : shape.plates().plates()) {
      walls.add(
          new Plate(
              plate.name(),
              plate.kind(),
              axes.of(plate.start()),
              axes.of(plate.end()),
              plate.bulge(),
              plate.width(),
              plate.thickness(),
              plate.certainty()));
    }
    return walls;
  }

  private static SectionForm form(OutlineShape shape, SectionProperties p) {
    List<Plate> plates = shape.plates().plates();
    if (plates.stream().allMatch(plate -> plate.kind() == PlateKind.FREE)) {
      return SectionForm.SOLID;
    }
    double opened =
        plates.stream().mapToDouble(w -> w.width() * Math.pow(w.thickness(), 3) / 3).sum();
    boolean cell = !shape.outline().holes().isEmpty() && p.torsionConstant() > CELL * opened;
    boolean round = plates.stream().anyMatch(plate -> plate.kind() == PlateKind.ROUND);
    return cell || round ? SectionForm.HOLLOW : SectionForm.OPEN;
  }

  private static Optional<String> doubt(OutlineShape shape) {
    if (shape.platesKnown()) {
      return Optional.empty();
    }
    List<String> doubts =
        Stream.concat(
                shape.plates().plates().stream()
                    .filter(plate -> plate.certainty() instanceof Certainty.Unsure)
                    .map(plate -> "wall " + plate.name() + " is " + plate.certainty().words()),
                shape.plates().doubts().stream()
                    .map(doubt -> "at " + doubt.where() + " " + doubt.because()))
            .toList();
    return Optional.of(doubts.isEmpty() ? "no walls were recognised" : String.join("; ", doubts));
  }
}
