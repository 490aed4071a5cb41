package spanledger.workbook.content;

/** The names of the sheets, in their order. */
final class SheetNames {

  static final String BASIS = "Basis";
  static final String SUMMARY = "Summary";
  static final String PICTURES = "Pictures";
  static final String FIGURES = "Figures";
  static final String NODES = "Nodes and supports";
  static final String SECTIONS = "Sections and alloys";
  static final String SEGMENTS = "Segments";
  static final String STIFFNESS = "Stiffness";
  static final String LOADS = "Loads";
  static final String LOAD_SUMS = "Load sums";
  static final String COMBINATIONS = "Combinations";
  static final String MOVEMENTS = "Movements";
  static final String DEFORMATIONS = "Deformations";
  static final String END_FORCES = "End forces";
  static final String NODE_FORCES = "Node forces";
  static final String CUT_LOADS = "Loads before cuts";
  static final String CUTS = "Cuts";
  static final String FORCE_ENVELOPE = "Force envelope";
  static final String STATE_CUT_LOADS = "State cut loads";
  static final String STATE_CUTS = "State cuts";
  static final String STRENGTH = "Member strength";
  static final String MEMBER_INPUTS = "Member inputs";
  static final String MEMBER_RESISTANCE = "Member resistance";
  static final String MEMBER_CHECKS = "Member checks";
  static final String MEMBER_USE = "Member utilisation";
  static final String JOINTS = "Joints";
  static final String JOINT_INPUTS = "Joint inputs";
  static final String JOINT_FORCES = "Joint forces";
  static final String JOINT_CHECKS = "Joint checks";
  static final String ANCHORS = "Anchors";
  static final String JOINT_CHOICES = "Joint choices";
  static final String DEFLECTION = "Deflection";
  static final String GUARDRAIL = "Guardrail";
  static final String STABILITY = "Stability";
  static final String VIBRATION = "Vibration";
  static final String WHOLE = "Whole structure";
  static final String ROBUSTNESS = "Braces left out";
  static final String SUPPORTS = "Support reactions";
  static final String FLIGHTS = "Flights";
  static final String DECK = "Deck and treads";
  static final String GEOMETRY = "Geometry";
  static final String PIECES = "Pieces";
  static final String WORKED = "Worked page";
  static final String SOURCES = "Sources";

  private SheetNames() {}
}
