package spanledger.action;

/** The axes in which a load's direction is given. */
public enum LoadAxes {
  /** Global: X and Y level, Z up. */
  GLOBAL,
  /** The segment's own: x along it, y and z across. */
  LOCAL
}
