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
    return everywhere ? all(stage.torsion().mesh()) : stage.aroundPeaks(stage.torsion().mesh());
  }

  private static boolean[] all(SectionMesh mesh) {
    boolean[] marked = new boolean[mesh.triangleCount()];
    Arrays.fill(marked, true);
    return marked;
  }

  /** The fewest triangles that make up the wanted share of the gap. */
  private static boolean[] worst(TorsionField torsion) {
    double[] gaps = torsion.gaps();
    double[] sorted = gaps.clone();
    Arrays.sort(sorted);
    double left = MARKED_SHARE * Arrays.stream(gaps).sum();
    int at = sorted.length;
    while (at > 0 && left > 0) {
      left -= sorted[--at];
    }
    double least = sorted[at];
    boolean[] marked = new boolean[gaps.length];
    for (int t = 0; t < gaps.length; t++) {
      marked[t] = gaps[t] >= least;
    }
    return marked;
  }
}
