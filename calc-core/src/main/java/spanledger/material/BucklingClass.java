package spanledger.material;

/** How fast walls lose strength to local buckling: the material classes of EN 1999-1-1, 6.1.4.4. */
public enum BucklingClass {
  /** The more favourable class. */
  A,
  /** The less favourable class. */
  B
}
