package spanledger.analysis;

/** What may be looked at along a segment. */
public enum SegmentEffect {
  /** N, N. */
  AXIAL,
  /** V_y, N. */
  SHEAR_Y,
  /** V_z, N. */
  SHEAR_Z,
  /** T, N·mm. */
  TORQUE,
  /** M_y, N·mm. */
  MOMENT_Y,
  /** M_z, N·mm. */
  MOMENT_Z,
  /** d_y, deflection from the chord along y, mm. */
  DEFLECTION_Y,
  /** d_z, deflection from the chord along z, mm. */
  DEFLECTION_Z
}
