package spanledger.section;

import static spanledger.procedure.Formulas.pi;

import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;

/**
 * A solid round bar.
 *
 * @param diameter mm
 */
public record SolidRound(double diameter) implements Shape {

  private static final String KIND = "solid round";

  /** Input D. */
  public static final Procedure PROCEDURE = define();

  private static final CompiledProcedure COMPILED = PROCEDURE.compile();

  /**
   * @throws IllegalArgumentException if the diameter is not positive
   */
  public SolidRound {
    Sizes.requirePositive(KIND, "diameter", diameter);
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
    return new double[] {diameter};
  }

  @Override
  public double thinnestWall() {
    return diameter;
  }

  @Override
  public double thickestWall() {
    return diameter;
  }

  private static Procedure define() {
    SectionSteps p = new SectionSteps("solid-round", "Properties of a solid round");
    Reference d = p.size("D", "diameter");
    Reference area =
        p.property(SectionSymbol.AREA, pi().times(d.pow(2)).over(4), SectionSources.GEOMETRY);
    Reference iy =
        p.property(
            SectionSymbol.SECOND_MOMENT_Y, pi().times(d.pow(4)).over(64), SectionSources.GEOMETRY);
    p.property(SectionSymbol.SECOND_MOMENT_Z, iy, SectionSources.GEOMETRY);
    Reference elastic =
        p.property(SectionSymbol.ELASTIC_MODULUS_Y, iy.times(2).over(d), SectionSources.ELASTIC);
    p.property(SectionSymbol.ELASTIC_MODULUS_Z, elastic, SectionSources.ELASTIC);
    Reference plastic =
        p.property(SectionSymbol.PLASTIC_MODULUS_Y, d.pow(3).over(6), SectionSources.PLASTIC);
    p.property(SectionSymbol.PLASTIC_MODULUS_Z, plastic, SectionSources.PLASTIC);
    p.notTurned();

    Source cowper =
        Source.fromMemory(
            "Cowper, The shear coefficient in Timoshenko's beam theory, J. Appl. Mech. 33 (1966)",
            "circle, with Poisson's ratio 0, which is on the safe side");
    p.property(SectionSymbol.SHEAR_AREA_Y, area.times(6).over(7), cowper);
    p.property(SectionSymbol.SHEAR_AREA_Z, area.times(6).over(7), cowper);
    p.property(SectionSymbol.PEAK_SHEAR_AREA_Y, area.times(3).over(4), SectionSources.SHEAR_FLOW);
    p.property(SectionSymbol.PEAK_SHEAR_AREA_Z, area.times(3).over(4), SectionSources.SHEAR_FLOW);
    p.property(SectionSymbol.TORSION_CONSTANT, iy.times(2), SectionSources.ROUND_TORSION);
    p.property(SectionSymbol.TORSION_MODULUS, elastic.times(2), SectionSources.ROUND_TORSION);

    p.noWall(SectionSymbol.WEB_SLENDERNESS);
    p.noWall(SectionSymbol.INNER_FLANGE_SLENDERNESS);
    p.noWall(SectionSymbol.OUTSTAND_SLENDERNESS);
    p.noWall(SectionSymbol.ROUND_SLENDERNESS);
    return p.build();
  }
}
