package spanledger.resistance.joint;

import static spanledger.procedure.Formulas.constant;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.pi;

import java.util.List;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Figured;
import spanledger.resistance.member.Working;

/**
 * A leg bent by one bolt: half of a T-stub. Lengths of yield lines, then the mechanisms: two hinges
 * (1), one hinge and the bolt (2), the bolt alone (3); and the prying force at the given pull.
 */
final class TStubLeg {

  static final Procedure LENGTHS = lengths();
  static final Procedure MECHANISMS = mechanisms();

  private static final CompiledProcedure LENGTHS_COMPILED = LENGTHS.compile();
  private static final CompiledProcedure MECHANISMS_COMPILED = MECHANISMS.compile();

  private TStubLeg() {}

  static Working lengths(TStub stub) {
    return Working.of(LENGTHS_COMPILED, stub.name())
        .given("m", of(stub, stub.toRoot(), "bolt to root"))
        .given("e", of(stub, stub.toEdge(), "bolt to edge"))
        .given("x_1", of(stub, stub.alongFirst(), "along the root, one side"))
        .given("x_2", of(stub, stub.alongSecond(), "along the root, other side"))
        .run();
  }

  static JointCheck check(TStubInput code, TStub stub, Feed pull) {
    Working lengths = lengths(stub);
    Working working =
        Working.of(MECHANISMS_COMPILED, stub.name())
            .with("F", pull)
            .given("t", of(stub, stub.thickness(), "thickness"))
            .same(lengths, "m", "n", "l_1", "l_2")
            .from(code.strengths(), "f_od", "f_od")
            .with("h_s", code.hardened())
            .with("k_o", code.elasticPart())
            .from(code.boltTension().working(), "F_t_Rd", "F_t_Rd")
            .run();
    String clause = "EN 1993-1-8, 6.2.4; EN 1999-1-1, Annex B";
    return new JointCheck(
        working,
        List.of(new JointUse("η_T", "leg at a bolt in tension, with prying", clause, "F", "F_Rd")));
  }

  private static Figured of(TStub stub, double value, String what) {
    return new Figured(value, stub.name() + ", " + what, stub.source());
  }

  private static Procedure lengths() {
    Source table = JointSource.en1993("Tables 6.4 to 6.6, from one bolt's share");
    JointSteps p = new JointSteps("t-stub-lengths", "Lengths of yield lines of a leg at a bolt");
    Reference m = p.size("m", "bolt to root, 0.8 of a fillet deducted");
    Reference e = p.size("e", "bolt to the edge behind it");
    Reference first = p.size("x_1", "along the root to the end or half way to the next bolt");
    Reference second = p.size("x_2", "the same on the other side");
    p.step(
        "n",
        "bolt to the prying force",
        min(e, m.times(1.25)),
        JointSource.en1993("Figure 6.2, Table 6.2"));
    Reference near = p.step("x", "shorter way to an end", min(first, second), table);
    Reference share = p.step("l_s", "share of the leg, a straight line", first.plus(second), table);
    Expression inner = m.times(4).plus(e.times(1.25));
    Expression atEnd = m.times(2).plus(e.times(0.625)).plus(near);
    Reference straight =
        p.step("l_nc", "yield lines not around the bolt", min(inner, atEnd, share), table);
    Reference round =
        p.step(
            "l_cp",
            "yield lines around the bolt",
            min(pi().times(2).times(m), pi().times(m).plus(near.times(2)), share.times(2)),
            table);
    Reference least = p.step("l_1", "length for mechanism 1", min(straight, round), table);
    p.step("l_row", "effective length of a row of two such bolts", least.times(2), table);
    p.step("l_2", "length for mechanism 2", straight, table);
    return p.build();
  }

  private static Procedure mechanisms() {
    Source annex = JointSource.en1999("Annex B, B.1; as EN 1993-1-8, Table 6.2");
    JointSteps p = new JointSteps("t-stub", "Leg at a bolt in tension, half of a T-stub");
    Reference pull = p.force("F", "pull on the leg at this bolt");
    Reference t = p.size("t", "thickness of the leg");
    Reference m = p.size("m", "bolt to root");
    Reference n = p.size("n", "bolt to the prying force");
    Reference first = p.size("l_1", "length for mechanism 1");
    Reference second = p.size("l_2", "length for mechanism 2");
    Reference yield = p.strength("f_od", "design yield strength of the leg");
    Reference hardened = p.factor("h_s", "hinge with hardening per hinge at yielding");
    Reference elastic = p.factor("k_o", "bolt at its elastic limit per bolt at its resistance");
    Reference bolt = p.force("F_t_Rd", "tension resistance of the bolt");
    Reference hinge1 =
        p.step("M_1", "hinge of mechanism 1", hinge(t, first, yield).times(hardened), annex);
    Reference hinge2 =
        p.step("M_2", "hinge of mechanism 2, at yielding", hinge(t, second, yield), annex);
    Reference mode1 = p.step("F_1", "two hinges in the leg", hinge1.times(2).over(m), annex);
    Reference mode2a =
        p.step(
            "F_2a",
            "one hinge with hardening, the bolt at its elastic limit",
            hinge2.times(hardened).plus(n.times(elastic).times(bolt)).over(m.plus(n)),
            annex);
    Reference mode2b =
        p.step(
            "F_2b",
            "one hinge at yielding, the bolt at its resistance",
            hinge2.plus(n.times(bolt)).over(m.plus(n)),
            annex);
    Reference mode3 = p.step("F_3", "the bolt alone", bolt, annex);
    Reference resistance = p.step("F_Rd", "resistance", min(mode1, mode2a, mode2b, mode3), annex);
    Source balance = JointSource.derived("Equilibrium of the leg about its root");
    Reference prying =
        p.step(
            "Q",
            "prying force that the hinge at the root leaves",
            max(constant(0, Dimension.FORCE), pull.times(m).minus(hinge2).over(n)),
            balance);
    p.step("F_t", "tension in the bolt with prying", pull.plus(prying), balance);
    p.use("η_T", "leg at a bolt in tension", pull, resistance, annex);
    return p.build();
  }

  private static Expression hinge(Reference t, Reference length, Reference strength) {
    return length.times(t.pow(2)).times(strength).over(4);
  }
}
