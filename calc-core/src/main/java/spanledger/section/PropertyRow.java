package spanledger.section;

import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.constant;
import static spanledger.procedure.Formulas.greater;

import java.util.Optional;
import java.util.OptionalDouble;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;

/**
 * Properties as a maker or a table publishes them, for an outline that no other shape describes.
 *
 * @param area A, mm²
 * @param shearAreaY A_v_y, mm²
 * @param shearAreaZ A_v_z, mm²
 * @param secondMomentY I_y about the principal axis y, mm⁴
 * @param secondMomentZ I_z about the principal axis z, mm⁴
 * @param torsionConstant I_t, mm⁴
 * @param elasticModulusY least W_el_y, mm³
 * @param elasticModulusZ least W_el_z, mm³
 * @param torsionModulus W_t, mm³
 * @param plasticModulusY W_pl_y, mm³; the elastic one if not given
 * @param plasticModulusZ W_pl_z, mm³; the elastic one if not given
 * @param peakShearAreaY tau_A_y, mm²; half of A_v_y if not given
 * @param peakShearAreaZ tau_A_z, mm²; half of A_v_z if not given
 * @param thinnestWall mm
 * @param thickestWall mm
 * @param walls the slendernesses of its walls; if not given, local buckling cannot be judged
 * @param source where the row comes from
 */
public record PropertyRow(
    double area,
    double shearAreaY,
    double shearAreaZ,
    double secondMomentY,
    double secondMomentZ,
    double torsionConstant,
    double elasticModulusY,
    double elasticModulusZ,
    double torsionModulus,
    OptionalDouble plasticModulusY,
    OptionalDouble plasticModulusZ,
    OptionalDouble peakShearAreaY,
    OptionalDouble peakShearAreaZ,
    double thinnestWall,
    double thickestWall,
    Optional<Walls> walls,
    Source source)
    implements Shape {

  private static final String KIND = "row of properties";

  /**
   * The required properties, then W_pl_y, W_pl_z, tau_A_y, tau_A_z as given (0 if not), then the
   * walls.
   */
  public static final Procedure PROCEDURE = define();

  private static final CompiledProcedure COMPILED = PROCEDURE.compile();

  /**
   * The slenderness of each kind of wall, 0 where there is none.
   *
   * @param web b/t of inner walls along z
   * @param innerFlange b/t of inner walls along y
   * @param outstand b/t of outstanding walls
   * @param round D/t of a round tube
   */
  public record Walls(double web, double innerFlange, double outstand, double round) {
    private static final Walls UNKNOWN = new Walls(0, 0, 0, 0);
  }

  /**
   * @throws IllegalArgumentException if a wall thickness is not positive or they are in the wrong
   *     order
   */
  public PropertyRow {
    Sizes.requirePositive(KIND, "thinnest wall", thinnestWall);
    Sizes.requirePositive(KIND, "thickest wall", thickestWall);
    if (thinnestWall > thickestWall) {
      throw new IllegalArgumentException(
          "The thinnest wall of a row of properties is "
              + thinnestWall
              + " mm, but must not exceed the thickest wall ("
              + thickestWall
              + " mm).");
    }
  }

  @Override
  public String kind() {
    return KIND;
  }

  @Override
  public CompiledProcedure compiled() {
    return COMPILED;
  }

  @Override
  public double[] inputs() {
    Walls known = walls.orElse(Walls.UNKNOWN);
    return new double[] {
      area,
      shearAreaY,
      shearAreaZ,
      secondMomentY,
      secondMomentZ,
      torsionConstant,
      elasticModulusY,
      elasticModulusZ,
      torsionModulus,
      plasticModulusY.orElse(0),
      plasticModulusZ.orElse(0),
      peakShearAreaY.orElse(0),
      peakShearAreaZ.orElse(0),
      known.web(),
      known.innerFlange(),
      known.outstand(),
      known.round()
    };
  }

  @Override
  public boolean platesKnown() {
    return walls.isPresent();
  }

  private static Procedure define() {
    SectionSteps p = new SectionSteps("property-row", "Properties as published");
    p.given(SectionSymbol.AREA, Domain.POSITIVE);
    Reference shearY = p.given(SectionSymbol.SHEAR_AREA_Y, Domain.POSITIVE);
    Reference shearZ = p.given(SectionSymbol.SHEAR_AREA_Z, Domain.POSITIVE);
    p.given(SectionSymbol.SECOND_MOMENT_Y, Domain.POSITIVE);
    p.given(SectionSymbol.SECOND_MOMENT_Z, Domain.POSITIVE);
    p.given(SectionSymbol.TORSION_CONSTANT, Domain.POSITIVE);
    Reference elasticY = p.given(SectionSymbol.ELASTIC_MODULUS_Y, Domain.POSITIVE);
    Reference elasticZ = p.given(SectionSymbol.ELASTIC_MODULUS_Z, Domain.POSITIVE);
    p.given(SectionSymbol.TORSION_MODULUS, Domain.POSITIVE);
    Source elastic =
        Source.derived("As published; if not, the elastic modulus, which is on the safe side");
    Source half =
        Source.derived(
            "As published; if not, half of the shear area, less than any shape here has while its walls'"
                + " thicknesses differ by no more than four times");
    Reference plasticY = ifGiven(p, SectionSymbol.PLASTIC_MODULUS_Y);
    Reference plasticZ = ifGiven(p, SectionSymbol.PLASTIC_MODULUS_Z);
    Reference peakY = ifGiven(p, SectionSymbol.PEAK_SHEAR_AREA_Y);
    Reference peakZ = ifGiven(p, SectionSymbol.PEAK_SHEAR_AREA_Z);
    p.given(SectionSymbol.WEB_SLENDERNESS, Domain.NOT_NEGATIVE);
    p.given(SectionSymbol.INNER_FLANGE_SLENDERNESS, Domain.NOT_NEGATIVE);
    p.given(SectionSymbol.OUTSTAND_SLENDERNESS, Domain.NOT_NEGATIVE);
    p.given(SectionSymbol.ROUND_SLENDERNESS, Domain.NOT_NEGATIVE);

    orElse(p, SectionSymbol.PLASTIC_MODULUS_Y, plasticY, elasticY, elastic);
    orElse(p, SectionSymbol.PLASTIC_MODULUS_Z, plasticZ, elasticZ, elastic);
    orElse(p, SectionSymbol.PEAK_SHEAR_AREA_Y, peakY, shearY.over(2), half);
    orElse(p, SectionSymbol.PEAK_SHEAR_AREA_Z, peakZ, shearZ.over(2), half);
    p.notTurned();
    return p.build();
  }

  private static Reference ifGiven(SectionSteps p, SectionSymbol symbol) {
    return p.given(
        symbol.symbol() + "_row",
        symbol.words() + " as published, 0 if not",
        symbol.dimension(),
        Domain.NOT_NEGATIVE);
  }

  private static void orElse(
      SectionSteps p, SectionSymbol symbol, Reference given, Expression otherwise, Source source) {
    p.property(
        symbol, choose(greater(given, constant(0, symbol.dimension())), given, otherwise), source);
  }
}
