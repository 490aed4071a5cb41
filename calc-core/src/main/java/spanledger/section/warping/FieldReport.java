package spanledger.section.warping;

import java.util.List;
import java.util.Locale;
import spanledger.section.outline.Point;

/**
 * How the finite-element values were found and how far they can be trusted.
 *
 * @param triangles triangles of the last mesh
 * @param nodes nodes of the last mesh
 * @param refinements how often the first mesh was refined
 * @param leastAngle least angle of the triangles, rad
 * @param torsionError half the gap of the bounds on the torsion constant, relative; a bound, not a
 *     guess, for the meshed shape
 * @param shapeError relative difference of the polar second moment of the meshed shape (arcs as
 *     parabolas) from the exact one
 * @param warpingChange relative change of the warping constant in the last refinement of the whole
 *     mesh
 * @param shearChange relative change of the shear areas in the last refinement of the whole mesh
 * @param peakChange relative change of the peak stresses in the last refinement
 * @param target what torsion error and shape error were asked to stay below
 * @param targetMet whether they do; if not, the mesh had reached its largest allowed size
 * @param sharpCorners re-entrant corners without a fillet, where elastic theory gives no bound on
 *     the stress; peak stresses leave them out up to the distance {@code leftOut}
 * @param leftOut half the mean wall thickness, mm
 */
public record FieldReport(
    int triangles,
    int nodes,
    int refinements,
    double leastAngle,
    double torsionError,
    double shapeError,
    double warpingChange,
    double shearChange,
    double peakChange,
    double target,
    boolean targetMet,
    List<Point> sharpCorners,
    double leftOut) {

  public FieldReport {
    sharpCorners = List.copyOf(sharpCorners);
  }

  /** The larger of torsion error and shape error. */
  public double error() {
    return Math.max(torsionError, shapeError);
  }

  /** Mesh and error in one line, for the label beside each value. */
  public String label() {
    return String.format(
        Locale.ROOT,
        "finite elements: %d triangles with 6 nodes, error of I_t at most %.2g %% (target %.2g %%%s)",
        triangles,
        100 * error(),
        100 * target,
        targetMet ? "" : ", NOT reached");
  }
}
