package spanledger.section;

import java.util.List;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Procedure;
import spanledger.provenance.Source;
import spanledger.section.feature.Feature;
import spanledger.section.outline.AreaIntegrals;
import spanledger.section.outline.BendingModuli;
import spanledger.section.outline.BoundaryIntegrals;
import spanledger.section.outline.Outline;
import spanledger.section.outline.PlaneProperties;
import spanledger.section.outline.Point;
import spanledger.section.outline.WallThickness;
import spanledger.section.plate.Plate;
import spanledger.section.plate.PlateKind;
import spanledger.section.plate.Plates;
import spanledger.section.warping.FieldProperties;
import spanledger.section.warping.FieldSolver;

/**
 * Any extrusion, by its outline.
 *
 * <p>Area and second moments follow from the sums of {@link
 * spanledger.section.outline.EdgeIntegrals} and {@link spanledger.section.outline.ArcIntegrals}
 * over the boundary. Plastic moduli and fibre distances are found by search along the same
 * boundary; torsion, shear areas and peak stresses are finite-element values whose mesh and error
 * {@link FieldProperties#report} states. The latter three enter the calculation as inputs.
 *
 * <p>The axes y and z of the properties are the principal axes nearest to those of the outline.
 *
 * @param outline the outline
 * @param plates its plates, recognised or the user's
 * @param field what the finite elements found for the outline
 * @param features its named features, for joints
 * @param source where the outline comes from
 */
public record OutlineShape(
    Outline outline, Plates plates, FieldProperties field, List<Feature> features, Source source)
    implements Shape {

  private static final Source UNSAID = Source.declared("the outline");

  private static final String KIND = "outline";

  /** Inputs and steps as {@link OutlineProcedure} lists them. */
  public static final Procedure PROCEDURE = OutlineProcedure.define();

  private static final CompiledProcedure COMPILED = PROCEDURE.compile();

  /** More turn than this, and plates are no longer told apart by direction, rad. */
  private static final double TURNED = Math.toRadians(10);

  public OutlineShape {
    features = List.copyOf(features);
  }

  /** An outline without named features. */
  public OutlineShape(Outline outline, Plates plates, FieldProperties field) {
    this(outline, plates, field, List.of(), UNSAID);
  }

  /**
   * Recognises the plates and solves for torsion and shear.
   *
   * @throws spanledger.section.mesh.MeshingException if details are too fine to mesh
   */
  public static OutlineShape of(Outline outline, FieldSolver solver) {
    return new OutlineShape(outline, Plates.of(outline), solver.solve(outline));
  }

  /** The same section with plates that the user corrected. */
  public OutlineShape withPlates(Plates corrected) {
    return new OutlineShape(outline, corrected, field, features, source);
  }

  /** The same section from another source. */
  public OutlineShape from(Source other) {
    return new OutlineShape(outline, plates, field, features, other);
  }

  /** Whether the outline encloses a hollow. */
  public boolean isHollow() {
    return !outline.holes().isEmpty();
  }

  /** Whether the outline is a round tube and nothing else. */
  public boolean isRoundTube() {
    return plates.plates().size() == 1 && plates.plates().get(0).kind() == PlateKind.ROUND;
  }

  @Override
  public String kind() {
    return KIND;
  }

  @Override
  public CompiledProcedure compiled() {
    return COMPILED;
  }

  @Override
  public double[] inputs() {
    PlaneProperties plane = PlaneProperties.of(outline);
    Point origin = PlaneProperties.origin(outline);
    AreaIntegrals sums = BoundaryIntegrals.about(origin, outline);
    double angle = nearestAngle(plane.majorAngle());
    BendingModuli y = plane.bendingAbout(outline, angle);
    BendingModuli z = plane.bendingAbout(outline, angle + Math.PI / 2);
    Point shearCentre = field.torsion().shearCentre().minus(plane.centroid());
    boolean turned = Math.abs(angle) > TURNED;
    double inner = Math.max(plates.webSlenderness(), plates.innerFlangeSlenderness());
    return new double[] {
      sums.area(),
      sums.firstY(),
      sums.firstZ(),
      sums.squareY(),
      sums.squareZ(),
      sums.productYZ(),
      Math.max(y.positiveFibre(), y.negativeFibre()),
      Math.max(z.positiveFibre(), z.negativeFibre()),
      y.plasticModulus(),
      z.plasticModulus(),
      field.shear().areaY(),
      field.shear().areaZ(),
      field.shear().coupling(),
      1 / field.peakShear(angle).stress(),
      1 / field.peakShear(angle + Math.PI / 2).stress(),
      field.torsion().torsionConstant(),
      field.torsion().torsionModulus(),
      field.torsion().warpingConstant(),
      shearCentre.y(),
      shearCentre.z(),
      turned ? inner : plates.webSlenderness(),
      turned ? inner : plates.innerFlangeSlenderness(),
      plates.outstandSlenderness(),
      plates.roundSlenderness()
    };
  }

  /** The same choice as the steps of the procedure make. */
  private static double nearestAngle(double majorAngle) {
    if (majorAngle > OutlineProcedure.EIGHTH_TURN) {
      return majorAngle - Math.PI / 2;
    }
    return majorAngle < -OutlineProcedure.EIGHTH_TURN ? majorAngle + Math.PI / 2 : majorAngle;
  }

  @Override
  public double thinnestWall() {
    return plates.plates().stream()
        .mapToDouble(Plate::thickness)
        .min()
        .orElseGet(() -> WallThickness.largest(outline));
  }

  @Override
  public double thickestWall() {
    double plate = plates.plates().stream().mapToDouble(Plate::thickness).max().orElse(0);
    return plates.isSure() && plate > 0 ? plate : Math.max(plate, WallThickness.largest(outline));
  }

  @Override
  public boolean platesKnown() {
    return plates.isSure() && !plates.plates().isEmpty();
  }
}
