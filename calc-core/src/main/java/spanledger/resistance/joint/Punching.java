package spanledger.resistance.joint;

import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.pi;
import static spanledger.procedure.Formulas.sqrt;

import java.util.List;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Figured;
import spanledger.resistance.member.Working;

/** A bolt head, nut or washer pulled through a plate; the same form for all codes. */
final class Punching {

  static final Procedure PROCEDURE = define();

  private static final CompiledProcedure COMPILED = PROCEDURE.compile();

  private Punching() {}

  static JointCheck check(Working strengths, Bolt bolt, HeldPlate plate, Feed tension) {
    Working.Feeding run =
        Working.of(COMPILED, plate.name() + ", " + bolt.name())
            .with("F_t", tension)
            .given("t", of(plate, plate.thickness(), "thickness"))
            .given("d_w", of(plate, plate.washer().orElse(0), washer(plate)))
            .from(strengths, "f_ud", "f_ud");
    Working working = new BoltInputs(bolt).acrossFlats(run).run();
    return new JointCheck(
        working,
        List.of(
            new JointUse(
                "η_p", "head through the plate", "EN 1993-1-8, Table 3.4", "F_t", "B_p_Rd")));
  }

  private static String washer(HeldPlate plate) {
    return plate.washer().isPresent() ? "stiff washer" : "stiff washer, none, written as 0";
  }

  private static Figured of(HeldPlate plate, double value, String what) {
    return new Figured(value, plate.name() + ", " + what, plate.source());
  }

  private static Procedure define() {
    Source read = JointSource.en1993Read("Table 3.4");
    JointSteps p = new JointSteps("punching", "Bolt head or nut through a plate");
    Reference force = p.force("F_t", "tension in the bolt, prying included");
    Reference thickness = p.size("t", "thickness of the plate");
    Reference washer = p.length("d_w", "diameter of a stiff washer, 0 if none");
    Reference flats = p.size("s", "width of head or nut across flats");
    Reference strength = p.strength("f_ud", "design strength of the plate to rupture");
    Reference diameter =
        p.step(
            "d_m",
            "mean of head or nut across flats and points, or the washer",
            choose(
                JointSteps.isThere(washer),
                washer,
                flats.times(number(1).plus(number(2).over(sqrt(number(3))))).over(2)),
            read);
    Reference resistance =
        p.step(
            "B_p_Rd",
            "resistance to punching",
            pi().times(0.6).times(diameter).times(thickness).times(strength),
            read);
    p.use("η_p", "head through the plate", force, resistance, read);
    return p.build();
  }
}
