package spanledger.resistance.joint;

import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.Working;

/**
 * Design strengths of a metal by each standard: {@code f_od} to yielding, {@code f_ud} to rupture,
 * {@code τ_od} to yielding in shear.
 */
final class PlateStrengths {

  static final Procedure EN1999 = en1999();
  static final Procedure ADM = factored("adm", "Aluminum Design Manual", adm());
  static final Procedure AS_NZS = factored("asnzs1664", "AS/NZS 1664.1", asNzs());

  private static final CompiledProcedure EN1999_COMPILED = EN1999.compile();
  private static final CompiledProcedure ADM_COMPILED = ADM.compile();
  private static final CompiledProcedure AS_NZS_COMPILED = AS_NZS.compile();

  private PlateStrengths() {}

  static Working en1999(CodeFigures figures, Metal metal) {
    return Working.of(EN1999_COMPILED, metal.name())
        .given("f_o", HoleInputs.proof(metal))
        .given("f_u", HoleInputs.ultimate(metal))
        .given("γ_M1", figures.figured(JointFigures.YIELDING))
        .given("γ_M2", figures.figured(JointFigures.RUPTURE))
        .run();
  }

  static Working factored(CodeFigures figures, boolean adm, Metal metal) {
    String yield = adm ? "yield" : "y";
    String rupture = adm ? "rupture" : "u";
    return Working.of(adm ? ADM_COMPILED : AS_NZS_COMPILED, metal.name())
        .given("f_o", HoleInputs.proof(metal))
        .given("f_u", HoleInputs.ultimate(metal))
        .given("φ_y", JointFigures.phi(figures, yield))
        .given("Ω_y", JointFigures.omega(figures, yield))
        .given("φ_u", JointFigures.phi(figures, rupture))
        .given("Ω_u", JointFigures.omega(figures, rupture))
        .run();
  }

  private static Source adm() {
    return Source.fromMemory("Aluminum Design Manual 2020", "D.2, F.2, G.2, A.4");
  }

  private static Source asNzs() {
    return Source.fromMemory("AS/NZS 1664.1:1997", "3.4, Table 3.4(A)");
  }

  private static Procedure en1999() {
    JointSteps p = new JointSteps("en1999-strengths", "Design strengths of a metal, EN 1999-1-1");
    Reference proof = p.strength("f_o", "0.2 % proof strength");
    Reference ultimate = p.strength("f_u", "ultimate strength");
    Reference yielding = p.factor("γ_M1", "partial factor of yielding");
    Reference rupture = p.factor("γ_M2", "partial factor of rupture");
    Reference yield =
        p.step("f_od", "design yield strength", proof.over(yielding), JointSource.en1999("6.2.1"));
    p.step(
        "f_ud", "design strength to rupture", ultimate.over(rupture), JointSource.en1999("6.2.3"));
    p.step(
        "τ_od",
        "design yield strength in shear",
        yield.over(sqrt(number(3))),
        JointSource.en1999("6.2.6"));
    return p.build();
  }

  private static Procedure factored(String id, String title, Source source) {
    JointSteps p = new JointSteps(id + "-strengths", "Design strengths of a metal, " + title);
    Reference proof = p.strength("f_o", "0.2 % proof strength");
    Reference ultimate = p.strength("f_u", "ultimate strength");
    Reference phiYield = p.factor("φ_y", "resistance factor, yielding");
    Reference omegaYield = p.factor("Ω_y", "safety factor, yielding");
    Reference phiRupture = p.factor("φ_u", "resistance factor, rupture");
    Reference omegaRupture = p.factor("Ω_u", "safety factor, rupture");
    Reference yield =
        p.step("f_od", "design yield strength", phiYield.times(proof).over(omegaYield), source);
    p.step(
        "f_ud",
        "design strength to rupture",
        phiRupture.times(ultimate).over(omegaRupture),
        source);
    p.step("τ_od", "design yield strength in shear", yield.times(0.6), source);
    return p.build();
  }
}
