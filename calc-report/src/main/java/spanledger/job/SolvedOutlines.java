package spanledger.job;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import spanledger.section.outline.Outline;
import spanledger.section.warping.FieldProperties;
import spanledger.section.warping.FieldSolver;

/** Torsion and shear of outlines, each solved once however many sections and jobs have it. */
final class SolvedOutlines {

  private final FieldSolver solver = FieldSolver.standard();
  private final Map<Outline, FieldProperties> solved = new ConcurrentHashMap<>();

  /**
   * The solution for an outline.
   *
   * @throws spanledger.section.mesh.MeshingException if details are too fine to mesh
   */
  FieldProperties of(Outline outline) {
    return solved.computeIfAbsent(outline, solver::solve);
  }
}
