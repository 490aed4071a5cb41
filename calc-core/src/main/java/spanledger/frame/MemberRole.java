package spanledger.frame;

/** What a member is for; it decides which limits apply to it. */
public enum MemberRole {
  /** Carries the floor: edge beam, cross bearer, stringer. */
  FLOOR("floor member"),
  /** A top, middle or knee rail of a guardrail. */
  RAIL("rail"),
  /** Stands up from the floor and holds rails. */
  RAIL_POST("rail post"),
  /** Carries the structure down to the ground. */
  LEG("leg"),
  /** Keeps legs from swaying. */
  BRACE("brace"),
  /** Anything else. */
  OTHER("member");

  private final String words;

  MemberRole(String words) {
    this.words = words;
  }

  /** The role in words. */
  public String words() {
    return words;
  }
}
