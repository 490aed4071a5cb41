package spanledger.resistance.en1999;

import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * The wall of a round tube, in compression or bending alike; its effective thickness is that of the
 * whole tube. The outer diameter is taken, which is on the safe side of that of the midline.
 */
final class RoundWall {

  static final Procedure PROCEDURE = define();

  private RoundWall() {}

  private static Procedure define() {
    Steps p = new Steps("round-wall", "The wall of a round tube, EN 1999-1-1");
    Reference diameter = p.size("D", "outer diameter");
    Reference thickness = p.size("t", "thickness");
    Reference area = p.positive("A_0", "area of the tube", Dimension.AREA);
    Reference second = p.positive("I_0", "second moment of the tube", Dimension.SECOND_MOMENT);
    WallClass.Limits limits = WallClass.limits(p);
    Reference slenderness =
        p.step(
            "β",
            "slenderness parameter",
            sqrt(diameter.over(thickness)).times(3),
            Clause.of("6.1.4.3, eq. 6.10"));
    WallClass wall = WallClass.of(p, limits, slenderness);
    Reference left = p.step("A", "area left", area.times(wall.factor()), Clause.of("6.1.5"));
    p.step("I", "second moment left", second.times(wall.factor()), Clause.of("6.1.5"));
    p.step("S", "first moment left", left.times(diameter).times(0), Clause.GEOMETRY);
    p.step("class_s", "class of the section", wall.grade().times(1), Clause.of("6.1.4.4"));
    p.step("r_s", "plastic reserve of the section", wall.reserve().times(1), Clause.of("6.2.5.1"));
    return p.build();
  }
}
