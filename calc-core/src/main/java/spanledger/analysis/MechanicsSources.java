package spanledger.analysis;

import spanledger.provenance.Source;

/** The works that the segment mechanics rest on. */
final class MechanicsSources {

  /**
   * Statics and elasticity of a straight prismatic beam, derived line by line in the theory notes.
   */
  static final Source STATICS =
      Source.derived("Equilibrium and elasticity of a straight beam (docs/theory/frame.md)");

  /** Slope-deflection of a beam that also deforms in shear. */
  static final Source SHEAR_FLEXIBLE_BEAM =
      Source.fromMemory(
          "J. S. Przemieniecki, Theory of Matrix Structural Analysis (1968)", "ch. 5");

  /** End springs as fixity factors. */
  static final Source FIXITY_FACTOR =
      Source.fromMemory(
          "G. R. Monforton and T. S. Wu, Matrix analysis of semi-rigidly connected frames,"
              + " J. Struct. Div. ASCE 89 (1963)",
          "ST6, pp. 13-42");

  /** Turns of a beam-column's ends under end moments and loads. */
  static final Source STABILITY_FUNCTIONS =
      Source.fromMemory(
          "S. P. Timoshenko and J. M. Gere, Theory of Elastic Stability (1961)", "ch. 1");

  /** A column that deforms in shear, by Engesser's assumption. */
  static final Source SHEAR_FLEXIBLE_COLUMN =
      Source.fromMemory(
          "S. P. Timoshenko and J. M. Gere, Theory of Elastic Stability (1961)", "art. 2.17");

  /** Coordinate geometry. */
  static final Source GEOMETRY = Source.derived("Coordinate geometry");

  private MechanicsSources() {}
}
