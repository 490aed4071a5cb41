package spanledger.resistance.joint;

import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.sqrt;

import java.util.List;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Figured;
import spanledger.resistance.member.Working;

/** A plate leg at a line: plastic hinge line under factored loads, first yielding in use. */
final class Leg {

  static final Procedure ULTIMATE = ultimate();
  static final Procedure IN_USE = inUse();
  static final Procedure NET = net();

  private static final CompiledProcedure ULTIMATE_COMPILED = ULTIMATE.compile();
  private static final CompiledProcedure IN_USE_COMPILED = IN_USE.compile();
  private static final CompiledProcedure NET_COMPILED = NET.compile();
  private static final String FROM = "derived from plastic hinge lines";

  private Leg() {}

  static JointCheck check(Working strengths, PlateLeg leg, LegForces forces) {
    Working working =
        run(ULTIMATE_COMPILED, strengths, leg, forces).from(strengths, "τ_od", "τ_od").run();
    return new JointCheck(
        working,
        List.of(
            new JointUse("η_leg", "leg at a hinge line", FROM, "sum", "sum_Rd"),
            new JointUse("η_legv", "leg in shear", FROM, "V", "V_pl")));
  }

  static JointCheck inUse(Working strengths, PlateLeg leg, LegForces forces) {
    Working working = run(IN_USE_COMPILED, strengths, leg, forces).run();
    return new JointCheck(
        working,
        List.of(
            new JointUse("η_lege", "leg stays elastic in use", "elastic bending", "σ_eq", "f_od")));
  }

  static JointCheck net(
      Working strengths, NetCut cut, Figured netFactor, String clause, Feed tension) {
    Working working =
        Working.of(NET_COMPILED, cut.name())
            .with("N", tension)
            .with("A_g", cut.grossArea())
            .with("A_net", cut.netArea())
            .given("k_net", netFactor)
            .from(strengths, "f_od", "f_od")
            .from(strengths, "f_ud", "f_ud")
            .run();
    return new JointCheck(
        working,
        List.of(
            new JointUse("η_Ng", "plate in tension, whole section", clause, "N", "N_g"),
            new JointUse("η_Nn", "plate in tension at holes", clause, "N", "N_n")));
  }

  private static Working.Feeding run(
      CompiledProcedure procedure, Working strengths, PlateLeg leg, LegForces forces) {
    return Working.of(procedure, leg.name())
        .with("M_o", forces.outOfPlane())
        .with("M_i", forces.inPlane())
        .with("V", forces.shear())
        .with("N", forces.axial())
        .given("t", of(leg, leg.thickness(), "thickness"))
        .given("b", of(leg, leg.width(), "width"))
        .given("d_h", of(leg, leg.holes(), "holes on the line"))
        .from(strengths, "f_od", "f_od");
  }

  private static Figured of(PlateLeg leg, double value, String what) {
    return new Figured(value, leg.name() + ", " + what, leg.source());
  }

  private record Line(
      Reference out,
      Reference in,
      Reference shear,
      Reference axial,
      Reference thickness,
      Reference strength,
      Reference width) {

    static Line inputs(JointSteps p) {
      Reference out = p.moment("M_o", "bending about the line");
      Reference in = p.moment("M_i", "bending in the plane of the leg");
      Reference shear = p.force("V", "shear at the line");
      Reference axial = p.force("N", "axial force in the leg");
      Reference thickness = p.size("t", "thickness");
      Reference whole = p.size("b", "width along the line");
      Reference holes = p.length("d_h", "holes on the line");
      Reference strength = p.strength("f_od", "design yield strength");
      Reference width =
          p.step(
              "b_n",
              "width less holes, as if they were at the edges",
              whole.minus(holes),
              JointSource.derived("Geometry"));
      return new Line(out, in, shear, axial, thickness, strength, width);
    }
  }

  private static Procedure ultimate() {
    Source plastic = JointSource.derived("Plastic bending of a rectangle");
    JointSteps p = new JointSteps("leg", "Plate leg at a hinge line");
    Line line = Line.inputs(p);
    Reference shearStrength = p.strength("τ_od", "design yield strength in shear");
    Reference out =
        p.step(
            "M_o_pl",
            "plastic moment about the line",
            line.width.times(line.thickness.pow(2)).times(line.strength).over(4),
            plastic);
    Reference in =
        p.step(
            "M_i_pl",
            "plastic moment in the plane of the leg",
            line.thickness.times(line.width.pow(2)).times(line.strength).over(4),
            plastic);
    Reference axial =
        p.step(
            "N_pl",
            "axial force at yielding",
            line.width.times(line.thickness).times(line.strength),
            plastic);
    Reference shear =
        p.step(
            "V_pl",
            "shear at yielding",
            line.width.times(line.thickness).times(shearStrength),
            plastic);
    Source together =
        Source.fromMemory("B. G. Neal, J. Mech. Eng. Sci. 3 (1961)", "rectangular section");
    Reference n = p.step("n_N", "part of the axial force", line.axial.over(axial).pow(2), together);
    Reference sum =
        p.step(
            "sum",
            "bending both ways, axial force and shear together",
            line.out
                .over(out)
                .plus(line.in.over(in))
                .plus(n)
                .plus(line.shear.over(shear).pow(4).over(max(number(1).minus(n), number(0.001)))),
            together);
    Reference most = p.step("sum_Rd", "most that they may be", number(1), together);
    p.step("η_leg", "leg at a hinge line, use", sum.over(most), together);
    p.use("η_legv", "leg in shear", line.shear, shear, plastic);
    return p.build();
  }

  private static Procedure inUse() {
    Source elastic = JointSource.derived("Elastic bending of a rectangle");
    JointSteps p = new JointSteps("leg-in-use", "Plate leg at a line, in use");
    Line line = Line.inputs(p);
    Reference normal =
        p.step(
            "σ",
            "greatest normal stress",
            line.axial
                .over(line.width.times(line.thickness))
                .plus(line.out.times(6).over(line.width.times(line.thickness.pow(2))))
                .plus(line.in.times(6).over(line.thickness.times(line.width.pow(2)))),
            elastic);
    Reference shear =
        p.step(
            "τ",
            "greatest shear stress",
            line.shear.times(1.5).over(line.width.times(line.thickness)),
            elastic);
    Reference equivalent =
        p.step(
            "σ_eq",
            "equivalent stress, as if both were at one place",
            sqrt(normal.pow(2).plus(shear.pow(2).times(3))),
            elastic);
    p.step("η_lege", "leg stays elastic in use, use", equivalent.over(line.strength), elastic);
    return p.build();
  }

  private static Procedure net() {
    Source clause =
        Source.fromMemory(
            "EN 1999-1-1:2007, 6.2.3; Aluminum Design Manual 2020, D.2; AS/NZS 1664.1:1997",
            "3.4.1");
    JointSteps p = new JointSteps("net-section", "Plate in tension with holes");
    Reference force = p.force("N", "tension in the plate");
    Reference gross = p.area("A_g", "area");
    Reference netArea = p.area("A_net", "area less holes");
    Reference factor = p.factor("k_net", "part of the net section's strength that counts");
    Reference yield = p.strength("f_od", "design yield strength");
    Reference rupture = p.strength("f_ud", "design strength to rupture");
    Reference whole = p.step("N_g", "tension at yielding", gross.times(yield), clause);
    Reference holes =
        p.step("N_n", "tension at rupture", factor.times(netArea).times(rupture), clause);
    p.use("η_Ng", "plate in tension, whole section", force, whole, clause);
    p.use("η_Nn", "plate in tension at holes", force, holes, clause);
    return p.build();
  }
}
