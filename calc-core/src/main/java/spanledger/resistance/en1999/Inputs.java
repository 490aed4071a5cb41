package spanledger.resistance.en1999;

import spanledger.material.Alloy;
import spanledger.provenance.Source;
import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.Figured;
import spanledger.resistance.member.MemberSection;
import spanledger.resistance.member.Working;

/** Numbers of alloy, section and code on their way into calculations. */
record Inputs(CodeFigures figures, Alloy alloy, MemberSection section) {

  static final Source CASE = Source.declared("The member's case");

  Working.Feeding strength(Working.Feeding run) {
    return run.given("f_o", ofAlloy(alloy.proofStrength(), "f_o"));
  }

  Working.Feeding yielding(Working.Feeding run) {
    return strength(run).given("γ_M1", figures.figured(Figures.YIELDING));
  }

  Working.Feeding rupture(Working.Feeding run) {
    return run.given("f_u", ofAlloy(alloy.ultimateStrength(), "f_u"))
        .given("γ_M2", figures.figured(Figures.RUPTURE));
  }

  Working.Feeding youngsModulus(Working.Feeding run) {
    return run.given("E", ofAlloy(alloy.youngsModulus(), "E"));
  }

  Working.Feeding moduli(Working.Feeding run) {
    return youngsModulus(run).given("G", ofAlloy(alloy.shearModulus(), "G"));
  }

  Working.Feeding curve(Working.Feeding run, String curve) {
    return run.given("α", figures.figured(Figures.imperfection(curve)))
        .given("λ_0", figures.figured(Figures.plateau(curve)));
  }

  Figured ofAlloy(double value, String symbol) {
    return new Figured(value, "alloy " + alloy.designation() + ", " + symbol, alloy.source());
  }

  Figured ofSection(double value, String symbol) {
    return new Figured(value, "section " + section.name() + ", " + symbol, section.source());
  }

  static Figured yes(boolean is, String what) {
    return new Figured(is ? 1 : 0, what, CASE);
  }
}
