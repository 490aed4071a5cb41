package spanledger.resistance.en1999;

import spanledger.provenance.Source;

/** Clauses of the standard. */
final class Clause {

  private static final String WORK = "EN 1999-1-1:2007";

  /** What follows from sizes alone. */
  static final Source GEOMETRY = Source.derived("Geometry");

  /** What follows from elastic beams. */
  static final Source BEAM = Source.derived("Elastic bending and torsion of beams");

  /** What follows from elastic struts of second order. */
  static final Source SECOND_ORDER =
      Source.derived("Elastic strut of second order (docs/theory/resistance-en1999.md)");

  private Clause() {}

  /** A clause as recalled. */
  static Source of(String place) {
    return Source.fromMemory(WORK, place);
  }
}
