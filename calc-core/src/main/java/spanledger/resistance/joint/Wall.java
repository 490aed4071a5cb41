package spanledger.resistance.joint;

import static spanledger.procedure.Formulas.min;

import java.util.List;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;

/**
 * The wall behind a joint, bent between its webs: a strip with hinges, as long along the wall as
 * the elastic plate makes it.
 */
final class Wall {

  static final Procedure LOAD = load();
  static final Procedure STRIP = strip();

  private static final CompiledProcedure LOAD_COMPILED = LOAD.compile();
  private static final CompiledProcedure STRIP_COMPILED = STRIP.compile();
  private static final String TEST = "derived from limit analysis, confirm by test";

  /**
   * Length along the wall, on each side of a load, per distance to the web: half of the least over
   * all places of what the elastic plate gives (docs/theory/joint-resistance.md).
   */
  private static final double SPREAD = 0.69;

  private Wall() {}

  static JointCheck check(Working strengths, WallBetweenWebs wall) {
    String name = wall.name();
    Source source = wall.source();
    Feed sum = new Feed.Given(0, name + ", no load before", source);
    for (WallBetweenWebs.Load load : wall.loads()) {
      String at = name + ", " + load.name();
      sum =
          Working.of(LOAD_COMPILED, at)
              .with("S_0", sum)
              .with("F", load.force())
              .given("k_F", load.part(), at + ", part of the force", source)
              .given("x", load.toWeb(), at + ", to the nearer web", source)
              .given("w", wall.width(), name + ", width between the webs", source)
              .given("l_1", load.first(), at + ", length of wall to one side", source)
              .given("l_2", load.second(), at + ", length of wall to the other side", source)
              .run()
              .feed("S");
    }
    Working working =
        Working.of(STRIP_COMPILED, name)
            .with("S", sum)
            .given("t", wall.thickness(), name + ", thickness", source)
            .given(
                "n_h",
                wall.clamped() ? 2 : 1,
                name + (wall.clamped() ? ", webs clamp the wall" : ", webs support the wall"),
                source)
            .from(strengths, "f_od", "f_od")
            .run();
    return new JointCheck(
        working, List.of(new JointUse("η_w", "wall between its webs", TEST, "S", "S_Rd")));
  }

  private static Procedure load() {
    Source elastic = JointSource.derived("Elastic plate between webs");
    JointSteps p = new JointSteps("wall-load", "Loads on a wall between webs");
    Reference before = p.force("S_0", "moment per length of the loads before, 0 if none");
    Reference force = p.force("F", "force square to the wall");
    Reference part = p.factor("k_F", "part of it that acts here");
    Reference toWeb = p.size("x", "to the nearer web");
    Reference width = p.size("w", "width between the webs");
    Reference first = p.length("l_1", "length of wall to one side that is there for this row");
    Reference second = p.length("l_2", "the same to the other side");
    Expression spread =
        p.step("l_s", "length of the plate on each side", toWeb.times(SPREAD), elastic);
    Reference length =
        p.step(
            "l",
            "length of wall that bears the load",
            min(spread, first).plus(min(spread, second)),
            elastic);
    p.step(
        "S",
        "moment per length of all up to this, of a supported strip",
        before.plus(
            part.times(force).times(toWeb).times(width.minus(toWeb)).over(width.times(length))),
        JointSource.derived("Statics of a strip between webs"));
    return p.build();
  }

  private static Procedure strip() {
    Source hinges = JointSource.derived("Plastic hinges of a strip between webs");
    JointSteps p = new JointSteps("wall", "Wall between webs, bent by a row of loads");
    Reference moment = p.force("S", "moment per length of a supported strip");
    Reference thickness = p.size("t", "thickness of the wall");
    Reference count = p.factor("n_h", "hinges that bear it: 2 if the webs clamp the wall, else 1");
    Reference strength = p.strength("f_od", "design yield strength of the wall");
    Reference hinge =
        p.step(
            "m_pl", "plastic moment per length", thickness.pow(2).times(strength).over(4), hinges);
    Reference resistance =
        p.step("S_Rd", "moment per length that may be", count.times(hinge), hinges);
    p.use("η_w", "wall between its webs", moment, resistance, hinges);
    return p.build();
  }
}
