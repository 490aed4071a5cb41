package spanledger.resistance.en1999;

import static spanledger.procedure.Formulas.abs;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.number;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * A strip of a wall that counts for less: beside a weld along the member, or in a hole (ρ_o = 0).
 *
 * <p>Where the wall is class 4 and the strip compressed, the smaller of both effective thicknesses
 * counts. Coordinates and sums as in {@link WallInBending}.
 */
final class SoftenedStrip {

  static final Procedure PROCEDURE = define();

  private SoftenedStrip() {}

  private static Procedure define() {
    Steps p = new Steps("strip", "A softened strip or a hole in a wall, EN 1999-1-1");
    Reference v1 = p.place("v_1", "start of the strip");
    Reference v2 = p.place("v_2", "end of the strip");
    Reference width = p.size("w", "width of the strip");
    Reference thickness = p.size("t", "thickness of the wall");
    Reference soft =
        p.input(
            "ρ_o",
            "strength of the strip per strength of the wall",
            Dimension.NONE,
            Domain.FRACTION);
    Reference local =
        p.input(
            "ρ_c",
            "effective thickness of the wall if compressed",
            Dimension.NONE,
            Domain.FRACTION);
    Reference axis = p.place("v_n", "neutral axis");
    WallSums.Before before = WallSums.areas(p);
    Reference middle = p.step("v_m", "middle of the strip", v1.plus(v2).over(2), Clause.GEOMETRY);
    Reference already =
        p.step(
            "ρ_a",
            "what local buckling leaves of the strip",
            choose(greater(middle, axis), local, number(1)),
            Clause.of("6.1.6.2"));
    Reference lost =
        p.step(
            "ΔA",
            "area that the strip loses besides",
            max(already.minus(soft), number(0)).times(thickness).times(width),
            Clause.of("6.1.6.2; the smaller of ρ_c and ρ_o,haz"));
    WallSums.after(p, before, lost, middle, abs(v2.minus(v1)));
    return p.build();
  }
}
