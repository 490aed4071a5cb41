package spanledger.section;

import spanledger.quantity.Dimension;

/**
 * The properties that the procedure of every shape works out, under the same symbol.
 *
 * <p>Axes: x along the member, z up through the depth, y across the width. For an angle, y and z of
 * the properties are the principal axes u (major) and v (minor), turned by {@code alpha}.
 */
public enum SectionSymbol {
  AREA("A", "area"),
  SHEAR_AREA_Y("A_v_y", "effective area for shear deformation along y"),
  SHEAR_AREA_Z("A_v_z", "effective area for shear deformation along z"),
  SECOND_MOMENT_Y("I_y", "second moment of area about y"),
  SECOND_MOMENT_Z("I_z", "second moment of area about z"),
  TORSION_CONSTANT("I_t", "torsion constant"),
  ELASTIC_MODULUS_Y("W_el_y", "least elastic modulus about y"),
  ELASTIC_MODULUS_Z("W_el_z", "least elastic modulus about z"),
  PLASTIC_MODULUS_Y("W_pl_y", "plastic modulus about y"),
  PLASTIC_MODULUS_Z("W_pl_z", "plastic modulus about z"),
  PRINCIPAL_ROTATION(
      "alpha", "turn of the principal y axis from the y axis of the outline, from y to z, rad"),
  PEAK_SHEAR_AREA_Y("tau_A_y", "shear along y over its greatest shear stress"),
  PEAK_SHEAR_AREA_Z("tau_A_z", "shear along z over its greatest shear stress"),
  TORSION_MODULUS("W_t", "torque over its greatest shear stress"),
  WEB_SLENDERNESS("s_web", "b/t of inner walls along z, 0 if none"),
  INNER_FLANGE_SLENDERNESS("s_flange_int", "b/t of inner walls along y, 0 if none"),
  OUTSTAND_SLENDERNESS("s_flange_out", "b/t of outstanding walls, 0 if none"),
  ROUND_SLENDERNESS("s_round", "D/t of a round tube, 0 if none");

  private final String symbol;
  private final String words;

  SectionSymbol(String symbol, String words) {
    this.symbol = symbol;
    this.words = words;
  }

  /** The symbol in procedures and workbooks. */
  public String symbol() {
    return symbol;
  }

  /** What it means. */
  public String words() {
    return words;
  }

  /** Its dimension. */
  public Dimension dimension() {
    return switch (this) {
      case AREA, SHEAR_AREA_Y, SHEAR_AREA_Z, PEAK_SHEAR_AREA_Y, PEAK_SHEAR_AREA_Z -> Dimension.AREA;
      case SECOND_MOMENT_Y, SECOND_MOMENT_Z, TORSION_CONSTANT -> Dimension.SECOND_MOMENT;
      case ELASTIC_MODULUS_Y,
          ELASTIC_MODULUS_Z,
          PLASTIC_MODULUS_Y,
          PLASTIC_MODULUS_Z,
          TORSION_MODULUS ->
          Dimension.SECTION_MODULUS;
      case PRINCIPAL_ROTATION,
          WEB_SLENDERNESS,
          INNER_FLANGE_SLENDERNESS,
          OUTSTAND_SLENDERNESS,
          ROUND_SLENDERNESS ->
          Dimension.NONE;
    };
  }
}
