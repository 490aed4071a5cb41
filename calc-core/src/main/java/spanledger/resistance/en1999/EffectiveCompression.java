package spanledger.resistance.en1999;

import static spanledger.procedure.Formulas.abs;

import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/** The effective section in compression and the force it bears. */
final class EffectiveCompression {

  static final Procedure PROCEDURE = define();

  private EffectiveCompression() {}

  private static Procedure define() {
    Steps p =
        new Steps("effective-compression", "Compression resistance of a section, EN 1999-1-1");
    Reference area = p.positive("A", "area that local buckling leaves", Dimension.AREA);
    Reference soft =
        p.positive("A_haz", "area that softening beside welds leaves of it", Dimension.AREA);
    Reference firstY = p.any("S_y", "first moment along y", Dimension.SECTION_MODULUS);
    Reference firstZ = p.any("S_z", "first moment along z", Dimension.SECTION_MODULUS);
    Reference strength = p.proofStrength();
    Reference partial = p.yieldFactor();
    p.step("e_Ny", "shift of the centroid along y", abs(firstY).over(area), Clause.BEAM);
    p.step("e_Nz", "shift of the centroid along z", abs(firstZ).over(area), Clause.BEAM);
    p.step(
        "N_c_Rd",
        "compression resistance of the section",
        soft.times(strength).over(partial),
        Clause.of("6.2.4, eq. 6.22"));
    return p.build();
  }
}
