package spanledger.resistance.joint;

import static spanledger.procedure.Formulas.atLeast;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.sqrt;

import java.util.List;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Figured;
import spanledger.resistance.member.Working;

/** A block of a plate torn out by a group of bolts. */
final class BlockTearing {

  static final Procedure EN1999 = en1999();
  static final Procedure ADM = adm();
  static final Procedure AS_NZS = asNzs();

  private static final CompiledProcedure EN1999_COMPILED = EN1999.compile();
  private static final CompiledProcedure ADM_COMPILED = ADM.compile();
  private static final CompiledProcedure AS_NZS_COMPILED = AS_NZS.compile();

  private BlockTearing() {}

  static JointCheck en1999(CodeFigures figures, BlockOfMetal block, Feed force) {
    Working.Feeding run =
        run(EN1999_COMPILED, block, force)
            .given("γ_M1", figures.figured(JointFigures.YIELDING))
            .given("γ_M2", figures.figured(JointFigures.RUPTURE));
    return done(run.run(), "EN 1999-1-1, 8.5.2.2");
  }

  static JointCheck adm(Figured phi, Figured omega, BlockOfMetal block, Feed force) {
    Working.Feeding run =
        gross(run(ADM_COMPILED, block, force), block).given("φ_j", phi).given("Ω_j", omega);
    return done(run.run(), "Aluminum Design Manual, J.6");
  }

  static JointCheck asNzs(Figured phi, Figured omega, BlockOfMetal block, Feed force) {
    Working.Feeding run =
        run(AS_NZS_COMPILED, block, force)
            .given("A_gv", of(block, block.grossShear(), "area in shear"))
            .given("φ_j", phi)
            .given("Ω_j", omega);
    return done(run.run(), "AS 4100, 9.1.9");
  }

  private static JointCheck done(Working working, String clause) {
    return new JointCheck(
        working, List.of(new JointUse("η_bt", "block torn out", clause, "F", "V_eff_Rd")));
  }

  private static Working.Feeding run(CompiledProcedure procedure, BlockOfMetal block, Feed force) {
    return Working.of(procedure, block.name())
        .with("F", force)
        .given("A_nt", of(block, block.netTension(), "net area in tension"))
        .given("A_nv", of(block, block.netShear(), "net area in shear"))
        .with("ecc", BoltInputs.yes(block.eccentric(), block.name() + ", uneven", block.source()))
        .given("f_o", HoleInputs.proof(block.metal()))
        .given("f_u", HoleInputs.ultimate(block.metal()));
  }

  private static Working.Feeding gross(Working.Feeding run, BlockOfMetal block) {
    return run.given("A_gt", of(block, block.grossTension(), "area in tension"))
        .given("A_gv", of(block, block.grossShear(), "area in shear"));
  }

  private static Figured of(BlockOfMetal block, double value, String what) {
    return new Figured(value, block.name() + ", " + what, block.source());
  }

  private record Block(
      JointSteps p,
      Reference force,
      Reference tension,
      Reference shear,
      Expression even,
      Reference proof,
      Reference ultimate) {

    static Block inputs(JointSteps p) {
      Reference force = p.force("F", "force of all bolts on the block");
      Reference tension = p.area0("A_nt", "area torn in tension, less holes");
      Reference shear = p.area("A_nv", "area sheared, less holes");
      Reference eccentric = p.yes("ecc", "uneven tension");
      Reference proof = p.strength("f_o", "0.2 % proof strength");
      Reference ultimate = p.strength("f_u", "ultimate strength");
      Expression even = choose(JointSteps.isYes(eccentric), number(0.5), number(1));
      return new Block(p, force, tension, shear, even, proof, ultimate);
    }

    Reference torn(Source source) {
      return p.step("N_nt", "torn in tension", even.times(tension).times(ultimate), source);
    }

    Procedure resists(Expression resistance, Source source) {
      Reference step = p.step("V_eff_Rd", "resistance to tearing out", resistance, source);
      p.use("η_bt", "block torn out", force, step, source);
      return p.build();
    }
  }

  private static Procedure en1999() {
    Source clause = JointSource.en1999("8.5.2.2");
    Block b = Block.inputs(new JointSteps("en1999-block", "Block torn out, EN 1999-1-1"));
    Reference yielding = b.p.factor("γ_M1", "partial factor of yielding");
    Reference rupture = b.p.factor("γ_M2", "partial factor of rupture");
    Reference torn = b.torn(clause);
    Reference sheared =
        b.p.step("V_nv", "yielding in shear", b.shear.times(b.proof).over(sqrt(number(3))), clause);
    return b.resists(torn.over(rupture).plus(sheared.over(yielding)), clause);
  }

  private static Procedure adm() {
    Source clause = Source.fromMemory("Aluminum Design Manual 2020", "J.6.3");
    Block b = Block.inputs(new JointSteps("adm-block", "Block torn out, Aluminum Design Manual"));
    Reference grossTension = b.p.area0("A_gt", "area in tension");
    Reference grossShear = b.p.area("A_gv", "area in shear");
    Reference phi = b.p.factor("φ_j", "resistance factor, joints");
    Reference omega = b.p.factor("Ω_j", "safety factor, joints");
    Reference torn = b.torn(clause);
    Reference sheared =
        b.p.step("V_nv", "rupture in shear", b.shear.times(b.ultimate).times(0.6), clause);
    Reference pulled =
        b.p.step("N_gt", "yielding in tension", b.even.times(grossTension).times(b.proof), clause);
    Reference slid =
        b.p.step("V_gv", "yielding in shear", grossShear.times(b.proof).times(0.6), clause);
    Reference nominal =
        b.p.step(
            "R_n",
            "nominal strength: rupture where it is greater, yielding where it is less",
            choose(atLeast(torn, sheared), torn.plus(slid), sheared.plus(pulled)),
            clause);
    Reference bounded =
        b.p.step("R_nu", "not more than rupture on both", min(nominal, torn.plus(sheared)), clause);
    return b.resists(phi.times(bounded).over(omega), clause);
  }

  private static Procedure asNzs() {
    Source clause = Source.fromMemory("AS 4100:2020", "9.1.9, block shear");
    Block b = Block.inputs(new JointSteps("asnzs1664-block", "Block torn out, AS 4100"));
    Reference grossShear = b.p.area("A_gv", "area in shear");
    Reference phi = b.p.factor("φ_j", "capacity factor, joints");
    Reference omega = b.p.factor("Ω_j", "safety factor, none: 1");
    Reference torn = b.torn(clause);
    Reference sheared =
        b.p.step(
            "V_n",
            "in shear: rupture less holes, or yielding",
            min(b.shear.times(b.ultimate).times(0.6), grossShear.times(b.proof).times(0.6)),
            clause);
    return b.resists(phi.times(torn.plus(sheared)).over(omega), clause);
  }
}
