package spanledger.section.warping;

import java.util.Arrays;
import spanledger.section.mesh.SectionMesh;

/** Which unknown each node has: its own, one shared with all nodes of its ring, or none. */
final class Unknowns {

  private final int[] unknownOf;
  private final int count;
  private final int tied;

  private Unknowns(int[] unknownOf, int count, int tied) {
    this.unknownOf = unknownOf;
    this.count = count;
    this.tied = tied;
  }

  /** One unknown per node, less the first node, which stays at zero. */
  static Unknowns freeButOne(SectionMesh mesh) {
    int[] unknownOf = new int[mesh.nodeCount()];
    Arrays.setAll(unknownOf, n -> n - 1);
    return new Unknowns(unknownOf, mesh.nodeCount() - 1, 0);
  }

  /** Zero on the outer ring, one value per hole; the unknowns of the holes come last. */
  static Unknowns constantOnRings(SectionMesh mesh) {
    int[] unknownOf = new int[mesh.nodeCount()];
    int count = 0;
    for (int n = 0; n < unknownOf.length; n++) {
      unknownOf[n] = mesh.ring(n) == SectionMesh.NO_RING ? count++ : -1;
    }
    for (int n = 0; n < unknownOf.length; n++) {
      if (mesh.ring(n) > 0) {
        unknownOf[n] = count + mesh.ring(n) - 1;
      }
    }
    return new Unknowns(unknownOf, count + mesh.holeCount(), mesh.holeCount());
  }

  /** The unknown of a node; -1 if its value is zero. */
  int of(int node) {
    return unknownOf[node];
  }

  int count() {
    return count;
  }

  /** How many of the last unknowns are shared by many nodes. */
  int tiedCount() {
    return tied;
  }
}
