package spanledger.section;

import java.util.List;
import java.util.Optional;
import spanledger.provenance.Source;
import spanledger.section.feature.Feature;
import spanledger.section.outline.InvalidOutlineException;
import spanledger.section.outline.Outline;
import spanledger.section.outline.OutlineFault;
import spanledger.section.outline.PartOverlaps;
import spanledger.section.outline.PlaneProperties;
import spanledger.section.plate.PlateCorrections;
import spanledger.section.plate.Plates;
import spanledger.section.warping.FieldProperties;
import spanledger.section.warping.FieldSolver;

/**
 * A section as it is drawn: its outline or outlines, the features that joints use, and what its
 * author says about its plates. All places in mm, y to the right and z up.
 *
 * @param name what it is called
 * @param source where the drawing comes from
 * @param parts its pieces, at least one; they may touch but not overlap
 * @param actingTogether who says that the pieces bend as one without slip, and why; empty if there
 *     is one piece, or if each bends by itself
 * @param features its named features
 * @param plates its plates, recognised and then corrected; empty of several pieces
 * @param corrections what its author says about the plates
 */
public record Extrusion(
    String name,
    String source,
    List<ExtrusionPart> parts,
    Optional<String> actingTogether,
    List<Feature> features,
    Plates plates,
    PlateCorrections corrections) {

  private static final Plates NO_PLATES = new Plates(List.of(), List.of());

  /**
   * @throws InvalidOutlineException if pieces overlap
   */
  public Extrusion {
    parts = List.copyOf(parts);
    features = List.copyOf(features);
    if (parts.isEmpty()) {
      throw new IllegalArgumentException("Section " + name + " has no outline.");
    }
    List<OutlineFault> overlaps =
        PartOverlaps.of(parts.stream().map(ExtrusionPart::outline).toList());
    if (!overlaps.isEmpty()) {
      throw new InvalidOutlineException(overlaps);
    }
  }

  /** A section of one piece without features, its plates as recognised. */
  public static Extrusion of(String name, String source, Outline outline) {
    return new Extrusion(
        name,
        source,
        List.of(new ExtrusionPart("", outline)),
        Optional.empty(),
        List.of(),
        Plates.of(outline),
        PlateCorrections.NONE);
  }

  /** A section of several pieces. */
  public static Extrusion ofParts(
      String name,
      String source,
      List<ExtrusionPart> parts,
      Optional<String> actingTogether,
      List<Feature> features) {
    return new Extrusion(
        name, source, parts, actingTogether, features, NO_PLATES, PlateCorrections.NONE);
  }

  /** Whether it is one piece, so that torsion and shear can be worked out. */
  public boolean isOnePiece() {
    return parts.size() == 1;
  }

  /**
   * The outline of the one piece.
   *
   * @throws IllegalStateException if there are several
   */
  public Outline outline() {
    if (!isOnePiece()) {
      throw new IllegalStateException("Section " + name + " has " + parts.size() + " parts.");
    }
    return parts.get(0).outline();
  }

  /**
   * Area and bending properties of all pieces acting together.
   *
   * @throws IllegalStateException if nobody says that they do
   */
  public PlaneProperties plane() {
    if (!isOnePiece() && actingTogether.isEmpty()) {
      throw new IllegalStateException("The parts of section " + name + " act each by itself.");
    }
    return PlaneProperties.ofPartsActingTogether(
        parts.stream().map(ExtrusionPart::outline).toList());
  }

  /**
   * The shape for analysis.
   *
   * @throws IllegalStateException if there are several pieces, whose torsion depends on how they
   *     are joined
   * @throws spanledger.section.mesh.MeshingException if details are too fine to mesh
   */
  public OutlineShape shape(FieldSolver solver) {
    return shape(solver.solve(outline()));
  }

  /**
   * The shape for analysis.
   *
   * @param field what the finite elements found for the outline
   * @throws IllegalStateException if there are several pieces
   */
  public OutlineShape shape(FieldProperties field) {
    return new OutlineShape(outline(), plates, field, features, Source.declared(source));
  }
}
