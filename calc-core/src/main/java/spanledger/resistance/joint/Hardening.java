package spanledger.resistance.joint;

import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.number;

import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;

/** How much more than the hinge at yielding a hinge bears when the metal hardens: EN 1999-1-1. */
final class Hardening {

  static final Procedure PROCEDURE = define();

  private static final CompiledProcedure COMPILED = PROCEDURE.compile();

  private Hardening() {}

  /** The factor of a metal; 1 for a metal whose elongation is not known. */
  static Feed of(Metal metal) {
    String origin = "metal " + metal.name();
    if (metal.elongation().isEmpty()) {
      return new Feed.Given(1, origin + ", elongation not known: no hardening", metal.source());
    }
    Working working =
        Working.of(COMPILED, metal.name())
            .given("f_o", HoleInputs.proof(metal))
            .given("f_u", HoleInputs.ultimate(metal))
            .given("E", metal.youngsModulus(), origin + ", E", metal.source())
            .given("ε_u", metal.elongation().getAsDouble(), origin + ", A", metal.source())
            .run();
    return working.feed("h_s");
  }

  private static Procedure define() {
    Source annex = JointSource.en1999("Annex B, B.2");
    JointSteps p = new JointSteps("en1999-hardening", "Hinge with hardening, EN 1999-1-1");
    Reference proof = p.strength("f_o", "0.2 % proof strength");
    Reference ultimate = p.strength("f_u", "ultimate strength");
    Reference modulus = p.strength("E", "Young's modulus");
    Reference strain = p.factor("ε_u", "strain at the ultimate strength: the least elongation");
    Reference elastic = p.step("ε_o", "strain at yielding", proof.over(modulus), annex);
    Reference psi =
        p.step(
            "ψ",
            "part of the hardening that counts",
            max(number(0), strain.minus(elastic.times(1.5)).over(strain.minus(elastic).times(1.5))),
            annex);
    p.step(
        "h_s",
        "hinge with hardening per hinge at yielding",
        number(1).plus(psi.times(ultimate.minus(proof)).over(proof)),
        annex);
    return p.build();
  }
}
