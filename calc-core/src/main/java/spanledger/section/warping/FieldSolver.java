package spanledger.section.warping;

import java.util.Arrays;
import spanledger.section.mesh.SectionMesh;
import spanledger.section.outline.Outline;
import spanledger.section.outline.PlaneProperties;
import spanledger.section.outline.SharpCorners;

/**
 * Finds torsion, warping and shear properties of an outline: meshes it, solves, and refines where
 * the two torsion solutions differ most until their gap is small enough.
 *
 * @param poissonRatio ν of the material, for shear areas
 * @param target largest allowed relative error of the torsion constant
 * @param mostTriangles where refinement stops even if the target is not met; the report says so
 */
public record FieldSolver(double poissonRatio, double target, int mostTriangles) {

  /** The part of the gap that the marked triangles make up. */
  private static final double MARKED_SHARE = 0.7;

  /** The part of the area that is refined to see what still moves. */
  private static final double COARSE_SHARE = 0.9;

  /**
   * Peak stresses are done when they move by less than this; each halving of the triangles halves
   * their error.
   */
  private static final double SETTLED_PEAK = 0.002;

  private static final int MOST_ROUNDS_AROUND_PEAKS = 3;

  /** ν = 0.3, target 0.1 %, at most 60 000 triangles. */
  public static FieldSolver standard() {
    return new FieldSolver(0.3, 0.001, 60_000);
  }

  public FieldSolver withTarget(double newTarget) {
    return new FieldSolver(poissonRatio, newTarget, mostTriangles);
  }

  public FieldSolver withPoissonRatio(double newRatio) {
    return new FieldSolver(newRatio, target, mostTriangles);
  }

  /**
   * Solves for an outline.
   *
   * @throws spanledger.section.mesh.MeshingException if details are too fine to mesh
   */
  public FieldProperties solve(Outline outline) {
    PlaneProperties exact = PlaneProperties.of(outline);
    SectionMesh mesh = SectionMesh.of(outline);
    FieldStage.Sharp sharp =
        new FieldStage.Sharp(SharpCorners.reentrant(outline), exact.area() / exact.perimeter());
    FieldStage before = new FieldStage(mesh, exact, poissonRatio, sharp);
    int refinements = 0;
    int aroundPeaks = 0;
    boolean everywhere = true;
    FieldStage.Changes changes = new FieldStage.Changes(Double.NaN, Double.NaN);
    while (true) {
      boolean wasGood = before.isGoodEnough(target);
      mesh = mesh.refined(marks(before, wasGood, everywhere));
      if (wasGood && !everywhere) {
        mesh = mesh.refined(before.aroundPeaks(mesh));
      }
      refinements++;
      FieldStage now = new FieldStage(mesh, exact, poissonRatio, sharp);
      if (mesh.triangleCount() > mostTriangles) {
        return now.properties(before, now.changesFrom(before), refinements, target);
      }
      if (wasGood) {
        // The bounds asked for no more; this mesh is finer all the same and tells how much values
        // without bounds still move.
        if (everywhere) {
          changes = now.changesFrom(before);
          everywhere = changes.shear() > target || changes.warping() > target;
        }
        boolean peaksDone =
            now.peakChange(before) <= SETTLED_PEAK || aroundPeaks == MOST_ROUNDS_AROUND_PEAKS;
        if (!everywhere && peaksDone) {
          return now.properties(before, changes, refinements, target);
        }
        aroundPeaks += everywhere ? 0 : 1;
      }
      before = now;
    }
  }

  private static boolean[] marks(FieldStage stage, boolean good, boolean everywhere) {
    if (!good) {
      return worst(stage.torsion());
    }
    return everywhere
        ? coarsest(stage.torsion().mesh())
        : stage.aroundPeaks(stage.torsion().mesh());
  }

  /**
   * The largest triangles, which cover most of the section: fine ones around details need not be
   * halved to see what still moves.
   */
  private static boolean[] coarsest(SectionMesh mesh) {
    double[] areas = new double[mesh.triangleCount()];
    for (int t = 0; t < areas.length; t++) {
      areas[t] = mesh.area(t);
    }
    return largest(areas, COARSE_SHARE);
  }

  private static boolean[] worst(TorsionField torsion) {
    return largest(torsion.gaps(), MARKED_SHARE);
  }

  /** Marks the fewest of the values that make up a share of their sum. */
  private static boolean[] largest(double[] values, double share) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    double left = share * Arrays.stream(values).sum();
    int at = sorted.length;
    while (at > 0 && left > 0) {
      left -= sorted[--at];
    }
    double least = sorted[at];
    boolean[] marked = new boolean[values.length];
    for (int t = 0; t < values.length; t++) {
      marked[t] = values[t] >= least;
    }
    return marked;
  }
}
