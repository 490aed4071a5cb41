package spanledger.resistance.member;

/** Which family of interaction formulas a section belongs to. */
public enum SectionForm {
  /** I-sections, channels, angles, any outline without a cell that carries its torsion. */
  OPEN,
  HOLLOW,
  SOLID
}
