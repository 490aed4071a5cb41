package spanledger.section;

import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.pi;

import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;

/**
 * A round tube.
 *
 * @param diameter outside, mm
 * @param thickness of the wall, mm
 */
public record RoundHollow(double diameter, double thickness) implements Shape {

  private static final String KIND = "round hollow section";

  /** Inputs D, t. */
  public static final Procedure PROCEDURE = define();

  private static final CompiledProcedure COMPILED = PROCEDURE.compile();

  /**
   * @throws IllegalArgumentException naming the size that is not positive, or a wall that leaves no
   *     hollow
   */
  public RoundHollow {
    Sizes.requirePositive(KIND, "diameter", diameter);
    Sizes.requirePositive(KIND, "thickness", thickness);
    Sizes.requireBelow(KIND, "thickness", thickness, "half the diameter", diameter / 2);
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
    return new double[] {diameter, thickness};
  }

  @Override
  public double thinnestWall() {
    return thickness;
  }

  @Override
  public double thickestWall() {
    return thickness;
  }

  private static Procedure define() {
    SectionSteps p = new SectionSteps("round-hollow", "Properties of a round hollow section");
    Reference outer = p.size("D", "outer diameter");
    Reference t = p.size("t", "thickness of the wall");
    Reference inner =
        p.step("D_i", "inner diameter", outer.minus(t.times(2)), SectionSources.GEOMETRY);
    Reference m =
        p.step("m", "inner over outer diameter", inner.over(outer), SectionSources.GEOMETRY);

    Reference area =
        p.property(
            SectionSymbol.AREA,
            pi().times(outer.pow(2).minus(inner.pow(2))).over(4),
            SectionSources.GEOMETRY);
    Expression inertia = pi().times(outer.pow(4).minus(inner.pow(4))).over(64);
    Reference iy = p.property(SectionSymbol.SECOND_MOMENT_Y, inertia, SectionSources.GEOMETRY);
    p.property(SectionSymbol.SECOND_MOMENT_Z, iy, SectionSources.GEOMETRY);
    Reference elastic =
        p.property(
            SectionSymbol.ELASTIC_MODULUS_Y, iy.times(2).over(outer), SectionSources.ELASTIC);
    p.property(SectionSymbol.ELASTIC_MODULUS_Z, elastic, SectionSources.ELASTIC);
    Reference plastic =
        p.property(
            SectionSymbol.PLASTIC_MODULUS_Y,
            outer.pow(3).minus(inner.pow(3)).over(6),
            SectionSources.PLASTIC);
    p.property(SectionSymbol.PLASTIC_MODULUS_Z, plastic, SectionSources.PLASTIC);
    p.notTurned();

    Expression hollow = number(1).plus(m.pow(2)).pow(2);
    Reference shear =
        p.property(
            SectionSymbol.SHEAR_AREA_Y,
            area.times(hollow.times(6)).over(hollow.times(7).plus(m.pow(2).times(20))),
            Source.fromMemory(
                "Cowper, The shear coefficient in Timoshenko's beam theory, J. Appl. Mech. 33 (1966)",
                "hollow circle, with Poisson's ratio 0, which is on the safe side"));
    p.property(SectionSymbol.SHEAR_AREA_Z, shear, SectionSources.GEOMETRY);
    Reference peak =
        p.property(
            SectionSymbol.PEAK_SHEAR_AREA_Y,
            iy.times(4).times(t).over(plastic),
            SectionSources.SHEAR_FLOW);
    p.property(SectionSymbol.PEAK_SHEAR_AREA_Z, peak, SectionSources.SHEAR_FLOW);
    p.property(SectionSymbol.TORSION_CONSTANT, iy.times(2), SectionSources.ROUND_TORSION);
    p.property(SectionSymbol.TORSION_MODULUS, elastic.times(2), SectionSources.ROUND_TORSION);

    p.noWall(SectionSymbol.WEB_SLENDERNESS);
    p.noWall(SectionSymbol.INNER_FLANGE_SLENDERNESS);
    p.noWall(SectionSymbol.OUTSTAND_SLENDERNESS);
    p.property(
        SectionSymbol.ROUND_SLENDERNESS,
        outer.over(t),
        Source.fromMemory("EN 1999-1-1:2007", "6.1.4.3, with the outer diameter"));
    return p.build();
  }
}
