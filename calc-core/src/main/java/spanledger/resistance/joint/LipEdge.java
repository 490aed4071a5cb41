package spanledger.resistance.joint;

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

/**
 * The edge of a lip that the shank of a bolt is pushed against, across the slot.
 *
 * <p>The lip lies between the shank and the wall, so nothing is torn out. A round shank touches a
 * straight edge on no more than the chord to which it has dug in.
 */
final class LipEdge {

  static final Procedure PROCEDURE = define();

  private static final CompiledProcedure COMPILED = PROCEDURE.compile();
  private static final String TEST = "derived from limit analysis, confirm by test";

  private LipEdge() {}

  static JointCheck check(Working strengths, ShankOnLip shank, Feed force) {
    Working working =
        Working.of(COMPILED, shank.name())
            .with("F_e", force)
            .given("d", of(shank, shank.diameter(), "diameter of the bolt"))
            .given("t", of(shank, shank.thickness(), "thickness of the lip at its edge"))
            .given("O", of(shank, shank.opening(), "opening between the lips"))
            .from(strengths, "f_od", "f_od")
            .run();
    return new JointCheck(
        working, List.of(new JointUse("η_e", "bolt on the edge of a lip", TEST, "F_e", "F_e_Rd")));
  }

  private static Figured of(ShankOnLip shank, double value, String what) {
    return new Figured(value, shank.name() + ", " + what, shank.source());
  }

  private static Procedure define() {
    Source geometry = JointSource.derived("Geometry of a round shank on a straight edge");
    Source yielding = JointSource.derived("Metal between shank and wall at yielding");
    JointSteps p = new JointSteps("lip-edge", "Bolt on the edge of a lip, across the slot");
    Reference force = p.force("F_e", "force of the bolt across the slot");
    Reference d = p.size("d", "diameter of the bolt");
    Reference thickness = p.size("t", "thickness of the lip at its edge");
    Reference opening = p.size("O", "opening between the lips");
    Reference strength = p.strength("f_od", "design yield strength of the lip");
    p.step("g", "play of the bolt in the slot, either way", opening.minus(d).over(2), geometry);
    Reference chord =
        p.step("b_c", "chord on which the shank bears, half its diameter", d.over(2), geometry);
    p.step(
        "δ",
        "how deep it has dug in then",
        d.over(2).times(number(1).minus(sqrt(number(1).minus(chord.over(d).pow(2))))),
        geometry);
    Reference resistance =
        p.step(
            "F_e_Rd",
            "force at which the metal behind the chord yields",
            chord.times(thickness).times(strength),
            yielding);
    p.use("η_e", "bolt on the edge of a lip", force, resistance, yielding);
    return p.build();
  }
}
