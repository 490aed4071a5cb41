package spanledger.action;

/** The variable action that leads a combination. */
public enum LeadingAction {
  /** Permanent actions alone. */
  NONE,
  /**
   * Imposed load on floors: as area load in patterns, and apart from it as one point or line load
   * anywhere.
   */
  FLOOR,
  /** Guardrail loads: as line load, and apart from it as one point load anywhere. */
  GUARDRAIL,
  /** Wind. */
  WIND
}
