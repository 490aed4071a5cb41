package spanledger.section;

import java.util.List;
import java.util.Optional;
import spanledger.section.feature.Feature;
import spanledger.section.outline.Outline;
import spanledger.section.outline.PlaneProperties;
import spanledger.section.plate.PlateEdits;
import spanledger.section.plate.Plates;
import spanledger.section.warping.FieldProperties;

/**
 * All that is known of a section given by outlines, for a report on it.
 *
 * @param parts its outlines; more than one bend as one section because the user says so
 * @param plane what follows from the boundaries exactly
 * @param plates the plates in use
 * @param edits what the user changed in the recognised plates
 * @param features named places for joints
 * @param field what finite elements found; missing for several parts, whose torsion depends on how
 *     they are joined
 */
public record SectionStudy(
    List<Outline> parts,
    PlaneProperties plane,
    Plates plates,
    PlateEdits edits,
    List<Feature> features,
    Optional<FieldProperties> field) {

  public SectionStudy {
    parts = List.copyOf(parts);
    features = List.copyOf(features);
  }

  /** What is known of a shape. */
  public static SectionStudy of(OutlineShape shape) {
    return new SectionStudy(
        List.of(shape.outline()),
        PlaneProperties.of(shape.outline()),
        shape.plates(),
        PlateEdits.between(Plates.of(shape.outline()), shape.plates()),
        shape.features(),
        Optional.of(shape.field()));
  }

  /**
   * What is known of pieces that bend as one.
   *
   * @throws IllegalStateException if nobody says that they do
   */
  public static SectionStudy ofParts(Extrusion extrusion) {
    return new SectionStudy(
        extrusion.parts().stream().map(ExtrusionPart::outline).toList(),
        extrusion.plane(),
        extrusion.plates(),
        PlateEdits.between(extrusion.plates(), extrusion.plates()),
        extrusion.features(),
        Optional.empty());
  }
}
