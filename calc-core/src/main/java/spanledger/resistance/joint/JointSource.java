package spanledger.resistance.joint;

import spanledger.provenance.Source;

/** Works that resistances of joints come from. */
final class JointSource {

  private JointSource() {}

  /** A clause of EN 1999-1-1 as recalled. */
  static Source en1999(String place) {
    return Source.fromMemory("EN 1999-1-1:2007", place);
  }

  /** A clause of EN 1993-1-8 as recalled. */
  static Source en1993(String place) {
    return Source.fromMemory("EN 1993-1-8:2005", place);
  }

  /** Tables 3.3 and 3.4 of EN 1993-1-8, which were read. */
  static Source en1993Read(String place) {
    return Source.published("EN 1993-1-8:2005", place);
  }

  /** What follows from mechanics; the derivation is in docs/theory/joint-resistance.md. */
  static Source derived(String what) {
    return Source.derived(what + " (docs/theory/joint-resistance.md)");
  }
}
