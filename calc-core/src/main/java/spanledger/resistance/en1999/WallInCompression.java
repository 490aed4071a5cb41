package spanledger.resistance.en1999;

import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.number;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * One wall of a section under axial compression. Sums run from wall to wall as in {@link
 * WallInBending}; S_y and S_z are the first moments that give the shift of the centroid.
 */
final class WallInCompression {

  static final Procedure PROCEDURE = define();

  private WallInCompression() {}

  private static Procedure define() {
    Steps p = new Steps("wall-in-compression", "A wall of a section in compression, EN 1999-1-1");
    Reference width = p.size("b", "flat width");
    Reference thickness = p.size("t", "thickness");
    Reference y = p.place("y_m", "middle of the wall along y, from the centroid");
    Reference z = p.place("z_m", "middle of the wall along z, from the centroid");
    Reference area = p.positive("A_0", "area left before this", Dimension.AREA);
    Reference firstY = p.any("S_y0", "its first moment along y", Dimension.SECTION_MODULUS);
    Reference firstZ = p.any("S_z0", "its first moment along z", Dimension.SECTION_MODULUS);
    Reference before =
        p.input(
            "class_0",
            "class of the section before this wall",
            Dimension.NONE,
            new Domain(1, true, 4));
    WallClass.Limits limits = WallClass.limits(p);
    Reference slenderness =
        p.step("β", "slenderness parameter", width.over(thickness), Clause.of("6.1.4.3, eq. 6.6"));
    WallClass wall = WallClass.of(p, limits, slenderness);
    Reference lost =
        p.step(
            "ΔA",
            "area that local buckling takes",
            number(1).minus(wall.factor()).times(thickness).times(width),
            Clause.of("6.1.5"));
    p.step("A", "area left", area.minus(lost), Clause.GEOMETRY);
    p.step("S_y", "first moment along y", firstY.minus(lost.times(y)), Clause.GEOMETRY);
    p.step("S_z", "first moment along z", firstZ.minus(lost.times(z)), Clause.GEOMETRY);
    p.step(
        "class_s", "class of the section so far", max(before, wall.grade()), Clause.of("6.1.4.4"));
    return p.build();
  }
}
