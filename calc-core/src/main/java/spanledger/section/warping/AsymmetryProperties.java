package spanledger.section.warping;

/**
 * Asymmetry terms of lateral-torsional buckling, from shear centre and cubic moments.
 *
 * <p>Reference: the parameter z_j of EN 1999-1-1:2007 Annex I (from memory, confirm against the
 * standard), which is half of the Wagner coefficient of the literature.
 *
 * @param zJ z_s − ∫z(y² + z²) dA / (2 I_y), mm
 * @param yJ y_s − ∫y(y² + z²) dA / (2 I_z), mm
 * @param polarRadius i_s: √((I_y + I_z)/A + y_s² + z_s²) about the shear centre, mm
 */
public record AsymmetryProperties(double zJ, double yJ, double polarRadius) {}
