package spanledger.joint.sharing;

import spanledger.provenance.Source;

/** The works that the sharing rests on. */
final class SharingSources {

  /** Rigid parts between springs. */
  static final Source RIGID_FACE =
      Source.derived("Small movement of a rigid part (docs/theory/joint-sharing.md)");

  /** Equilibrium. */
  static final Source STATICS = Source.derived("Equilibrium (docs/theory/joint-sharing.md)");

  private SharingSources() {}
}
