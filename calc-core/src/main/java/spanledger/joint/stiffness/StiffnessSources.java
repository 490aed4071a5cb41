package spanledger.joint.stiffness;

import spanledger.provenance.Source;

/** The works that stiffnesses of joints rest on. */
final class StiffnessSources {

  /** Stiffness coefficients of bolted parts. */
  static final Source COEFFICIENTS = Source.fromMemory("EN 1993-1-8:2005", "6.3.2, Table 6.11");

  /** Springs in series and beams. */
  static final Source MECHANICS =
      Source.derived("Elasticity of short beams and bars (docs/theory/joint-sharing.md)");

  /** Characteristic values from tests. */
  static final Source TESTS = Source.fromMemory("EN 1990:2002", "Annex D, D.7.2, Table D.1");

  private StiffnessSources() {}
}
