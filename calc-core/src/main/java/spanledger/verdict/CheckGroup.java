package spanledger.verdict;

/** The groups in which checks are reported. */
public enum CheckGroup {
  MEMBER_STRENGTH("Member strength"),
  MEMBER_RESISTANCE("Member resistance by code"),
  JOINTS("Joints and feet"),
  MEMBER_DEFLECTION("Member deflection"),
  GUARDRAIL("Guardrail"),
  STABILITY("Sway and stability"),
  VIBRATION("Vibration"),
  WHOLE_STRUCTURE("Whole structure"),
  SUPPORT("Supports"),
  DECK("Deck and treads"),
  GEOMETRY("Geometry"),
  OUTSIDE("Not covered");

  private final String words;

  CheckGroup(String words) {
    this.words = words;
  }

  /** The group's title. */
  public String words() {
    return words;
  }
}
