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
 * The net area of a plate along a line that goes across it through holes, straight or in a zigzag.
 *
 * <p>A leg of the line that slants counts as wider by s²/(4p), with s its length along the force
 * and p across it, but by no more than 0.65 s, as a leg along the force is sheared.
 *
 * @param name of the place and the line
 * @param metal of the plate
 * @param width of the plate across the force, mm
 * @param thickness of the plate, mm
 * @param hole diameter of its holes, mm
 * @param holes how many the line goes through
 * @param slants its legs from hole to hole that are not straight across
 * @param source where this is given
 */
public record NetLine(
    String name,
    Metal metal,
    double width,
    double thickness,
    double hole,
    int holes,
    List<Slant> slants,
    Source source) {

  static final Procedure SLANTS = slanting();
  static final Procedure LINE = line();

  private static final CompiledProcedure SLANTS_COMPILED = SLANTS.compile();
  private static final CompiledProcedure LINE_COMPILED = LINE.compile();

  /** How many legs one run of {@link #SLANTS} takes. */
  private static final int LEGS = 4;

  /** The most that a leg adds to the width, per length along the force. */
  private static final double SHEARED = 0.65;

  /**
   * A leg of a line from hole to hole.
   *
   * @param name from which hole to which, in words
   * @param along its length along the force, mm
   * @param across its length across the force, more than 0, mm
   */
  public record Slant(String name, double along, double across) {

    /** What the leg adds to the width of the plate, mm: step b_1 and so on of the procedure. */
    public double added() {
      double[] inputs = new double[1 + 2 * LEGS];
      for (int leg = 0; leg < LEGS; leg++) {
        inputs[1 + 2 * leg] = leg == 0 ? along : 0;
        inputs[2 + 2 * leg] = leg == 0 ? across : 1;
      }
      return SLANTS_COMPILED.run(inputs)[SLANTS_COMPILED.slot("b_1")];
    }
  }

  public NetLine {
    slants = List.copyOf(slants);
  }

  /** The cut along the line. */
  public NetCut cut() {
    Working run =
        Working.of(LINE_COMPILED, name)
            .given("w", width, name + ", width across the force", source)
            .given("t", thickness, name + ", thickness", source)
            .given("n", holes, name + ", holes on the line", source)
            .given("d_0", hole, name + ", diameter of the holes", source)
            .with("b", added())
            .run();
    return new NetCut(name, metal, run.feed("A_g"), run.feed("A_net"), source);
  }

  private Feed added() {
    Feed before = new Feed.Given(0, name + ", no leg before", source);
    for (int from = 0; from < slants.size(); from += LEGS) {
      Working.Feeding run = Working.of(SLANTS_COMPILED, name).with("b_0", before);
      for (int leg = 1; leg <= LEGS; leg++) {
        int at = from + leg - 1;
        Slant slant =
            at < slants.size() ? slants.get(at) : new Slant("no further leg, written as", 0, 1);
        run.given("s_" + leg, slant.along(), name + ", " + slant.name() + ", along", source)
            .given("p_" + leg, slant.across(), name + ", " + slant.name() + ", across", source);
      }
      before = run.run().feed("b");
    }
    return before;
  }

  private static Procedure slanting() {
    Source clause =
        Source.fromMemory(
            "EN 1999-1-1:2007, 6.2.2.2; s²/(4p) also Aluminum Design Manual 2020", "D.3.1");
    JointSteps p = new JointSteps("net-slants", "Slanting legs of lines through staggered holes");
    Expression sum = p.length("b_0", "width that legs before these add, 0 if none");
    for (int leg = 1; leg <= LEGS; leg++) {
      Reference along = p.length("s_" + leg, "leg " + leg + " along the force, 0 if none");
      Reference across = p.size("p_" + leg, "leg " + leg + " across the force");
      sum =
          sum.plus(
              p.step(
                  "b_" + leg,
                  "width that leg " + leg + " adds",
                  min(along.pow(2).over(across.times(4)), along.times(SHEARED)),
                  clause));
    }
    p.step("b", "width that all of them add", sum, clause);
    return p.build();
  }

  private static Procedure line() {
    Source clause =
        Source.fromMemory(
            "EN 1999-1-1:2007, 6.2.2.2; Aluminum Design Manual 2020, D.3.1; AS/NZS 1664.1:1997",
            "4.7");
    JointSteps p = new JointSteps("net-line", "Area of plies along the worst line through holes");
    Reference width = p.size("w", "width of the ply across the force");
    Reference thickness = p.size("t", "thickness of the ply");
    Reference holes = p.factor("n", "holes on the line");
    Reference hole = p.size("d_0", "diameter of the holes");
    Reference added = p.length("b", "width that slanting legs add, 0 if the line is straight");
    p.step("A_g", "whole area", width.times(thickness), JointSource.derived("Geometry"));
    p.step(
        "A_net",
        "area less holes",
        width.minus(holes.times(hole)).plus(added).times(thickness),
        clause);
    return p.build();
  }
}
