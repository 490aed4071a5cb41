package spanledger.analysis;

/** On which side of a cut: a point load at the cut makes shear and axial force jump there. */
public enum Side {
  /** Just before: a load exactly at the cut lies beyond it. */
  BEFORE,
  /** Just after: a load exactly at the cut has been passed. */
  AFTER
}
