package spanledger.section;

import spanledger.provenance.Source;

/** Where the formulas for section properties come from. */
final class SectionSources {

  static final Source GEOMETRY = Source.derived("Geometry of an outline with sharp corners");
  static final Source ELASTIC = Source.derived("Elastic bending of beams");
  static final Source PLASTIC =
      Source.derived("First moments of the halves about the axis of equal areas");
  static final Source SHEAR_FLOW = Source.derived("Shear flow of elastic bending, V·S/(I·t)");
  static final Source SHEAR_ENERGY =
      Source.derived("Strain energy of the shear flow along the wall midlines, I²/∫(S²/t)ds");
  static final Source CLOSED_TORSION =
      Source.derived("Torsion of thin-walled closed sections (Bredt)");
  static final Source OPEN_TORSION =
      Source.derived("Torsion of thin-walled open sections, (1/3)·Σ(b·t³) (Saint-Venant)");
  static final Source ROUND_TORSION = Source.derived("Torsion of round sections (Coulomb)");
  static final Source FLAT_WIDTH = Source.fromMemory("EN 1999-1-1:2007", "6.1.4.2, flat widths");
  static final Source NO_SUCH_WALL = Source.derived("The shape has no such wall");

  private SectionSources() {}
}
