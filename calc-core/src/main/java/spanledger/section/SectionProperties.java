package spanledger.section;

import spanledger.procedure.CompiledProcedure;

/**
 * What a section's calculation gives, in mm and rad. See {@link SectionSymbol} for each symbol.
 *
 * @param area A
 * @param shearAreaY A_v_y
 * @param shearAreaZ A_v_z
 * @param secondMomentY I_y
 * @param secondMomentZ I_z
 * @param torsionConstant I_t
 * @param elasticModulusY W_el_y
 * @param elasticModulusZ W_el_z
 * @param plasticModulusY W_pl_y
 * @param plasticModulusZ W_pl_z
 * @param principalRotation alpha
 * @param peakShearAreaY tau_A_y
 * @param peakShearAreaZ tau_A_z
 * @param torsionModulus W_t
 * @param webSlenderness s_web
 * @param innerFlangeSlenderness s_flange_int
 * @param outstandSlenderness s_flange_out
 * @param roundSlenderness s_round
 * @param platesKnown whether the slendernesses cover every wall; if not, local buckling cannot be
 *     judged
 */
public record SectionProperties(
    double area,
    double shearAreaY,
    double shearAreaZ,
    double secondMomentY,
    double secondMomentZ,
    double torsionConstant,
    double elasticModulusY,
    double elasticModulusZ,
    double plasticModulusY,
    double plasticModulusZ,
    double principalRotation,
    double peakShearAreaY,
    double peakShearAreaZ,
    double torsionModulus,
    double webSlenderness,
    double innerFlangeSlenderness,
    double outstandSlenderness,
    double roundSlenderness,
    boolean platesKnown) {

  /**
   * Runs the calculation of a shape.
   *
   * @throws spanledger.procedure.OutOfDomainException if the shape has no properties
   */
  public static SectionProperties of(Shape shape) {
    CompiledProcedure compiled = shape.compiled();
    double[] values = compiled.run(shape.inputs());
    return new SectionProperties(
        value(compiled, values, SectionSymbol.AREA),
        value(compiled, values, SectionSymbol.SHEAR_AREA_Y),
        value(compiled, values, SectionSymbol.SHEAR_AREA_Z),
        value(compiled, values, SectionSymbol.SECOND_MOMENT_Y),
        value(compiled, values, SectionSymbol.SECOND_MOMENT_Z),
        value(compiled, values, SectionSymbol.TORSION_CONSTANT),
        value(compiled, values, SectionSymbol.ELASTIC_MODULUS_Y),
        value(compiled, values, SectionSymbol.ELASTIC_MODULUS_Z),
        value(compiled, values, SectionSymbol.PLASTIC_MODULUS_Y),
        value(compiled, values, SectionSymbol.PLASTIC_MODULUS_Z),
        value(compiled, values, SectionSymbol.PRINCIPAL_ROTATION),
        value(compiled, values, SectionSymbol.PEAK_SHEAR_AREA_Y),
        value(compiled, values, SectionSymbol.PEAK_SHEAR_AREA_Z),
        value(compiled, values, SectionSymbol.TORSION_MODULUS),
        value(compiled, values, SectionSymbol.WEB_SLENDERNESS),
        value(compiled, values, SectionSymbol.INNER_FLANGE_SLENDERNESS),
        value(compiled, values, SectionSymbol.OUTSTAND_SLENDERNESS),
        value(compiled, values, SectionSymbol.ROUND_SLENDERNESS),
        shape.platesKnown());
  }

  private static double value(CompiledProcedure compiled, double[] values, SectionSymbol symbol) {
    return values[compiled.slot(symbol.symbol())];
  }
}
