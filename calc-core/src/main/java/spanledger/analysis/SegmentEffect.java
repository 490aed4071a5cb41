package spanledger.analysis;

/** What may be looked at along a segment. */
public enum SegmentEffect {
  /** N, N. */
  AXIAL("N"),
  /** V_y, N. */
  SHEAR_Y("V_y"),
  /** V_z, N. */
  SHEAR_Z("V_z"),
  /** T, N·mm. */
  TORQUE("T"),
  /** M_y, N·mm. */
  MOMENT_Y("M_y"),
  /** M_z, N·mm. */
  MOMENT_Z("M_z"),
  /** d_y, deflection from the chord along y, mm. */
  DEFLECTION_Y("d_y"),
  /** d_z, deflection from the chord along z, mm. */
  DEFLECTION_Z("d_z");

  private final String symbol;

  SegmentEffect(String symbol) {
    this.symbol = symbol;
  }

  /** The symbol that the procedures have for it. */
  public String symbol() {
    return symbol;
  }
}
