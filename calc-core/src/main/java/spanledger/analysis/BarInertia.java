package spanledger.analysis;

import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.constant;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.number;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * What of a segment's inertia does not hang on how it moves: its inertia about its own axis, and
 * how far its ends follow each other where joints along or about the axis are not rigid.
 *
 * <p>Inputs: L, ρ, I_y, I_z and the fixities γ_a1, γ_a2, γ_x1, γ_x2 of {@link SegmentStiffness}.
 * Steps: c_a1, c_a2 (share of the stretch that the joint at an end takes up), c_x1, c_x2 (the same
 * of the twist), Θ (kg·mm²).
 */
public final class BarInertia {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private BarInertia() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("bar-inertia", "Inertia of a segment about its axis");
    Reference length = p.input("L", "length", Dimension.LENGTH, Domain.POSITIVE);
    Reference density = p.input("ρ", "density", Dimension.DENSITY, Domain.POSITIVE);
    Reference iy =
        p.input("I_y", "second moment about y", Dimension.SECOND_MOMENT, Domain.POSITIVE);
    Reference iz =
        p.input("I_z", "second moment about z", Dimension.SECOND_MOMENT, Domain.POSITIVE);
    Reference[] fixity = new Reference[4];
    String[] marks = {"a1", "a2", "x1", "x2"};
    for (int i = 0; i < marks.length; i++) {
      fixity[i] =
          p.input(
              "γ_" + marks[i], "fixity of the joint " + marks[i], Dimension.NONE, Domain.FRACTION);
    }
    taken(p, "a", "stretch", fixity[0], fixity[1]);
    taken(p, "x", "twist", fixity[2], fixity[3]);
    p.step(
        "Θ",
        "inertia about the axis; none where nothing turns the bar",
        Dimension.whole(2, 0, 1, 0),
        choose(
            greater(fixity[2].plus(fixity[3]), number(0)),
            density.times(iy.plus(iz)).times(length),
            constant(0, Dimension.whole(2, 0, 1, 0))),
        MechanicsSources.STATICS);
    return p.build();
  }

  /**
   * Springs in series: a joint takes up its flexibility's share. With both ends free nothing is
   * strained, and the bar goes with its nodes.
   */
  private static void taken(
      Procedure.Builder p, String mark, String what, Reference first, Reference second) {
    Expression all = first.plus(second).minus(first.times(second));
    Reference[] ends = {first, second};
    for (int end = 0; end < 2; end++) {
      p.step(
          "c_" + mark + (end + 1),
          "share of the " + what + " in the joint at end " + (end + 1),
          Dimension.NONE,
          choose(
              greater(first.plus(second), number(0)),
              number(1).minus(ends[end]).times(ends[1 - end]).over(all),
              number(0)),
          MechanicsSources.FIXITY_FACTOR);
    }
  }
}
