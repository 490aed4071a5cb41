package spanledger.action;

/** Into which parts a floor is divided that may be loaded or not, each by itself. */
public enum FloorBays {
  /**
   * Divided where legs or supports stand under floor members: along the members at such a node,
   * across them at the line of members nearest to it.
   */
  SPANS,
  /** As {@link #SPANS}, and across the members at every line of members. */
  STRIPS,
  /** Not divided. */
  WHOLE
}
