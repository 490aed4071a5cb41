package spanledger.resistance.en1999;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/** What is left of a section, carried from wall to wall. */
final class WallSums {

  private static final Domain CLASSES = new Domain(1, true, 4);

  /** The sums before a wall. */
  record Before(
      Reference area, Reference first, Reference second, Reference number, Reference reserve) {}

  private WallSums() {}

  static Before before(Steps p) {
    Before sums = areas(p);
    return new Before(
        sums.area(),
        sums.first(),
        sums.second(),
        p.input("class_0", "class of the section before this wall", Dimension.NONE, CLASSES),
        p.input("r_0", "plastic reserve before this wall", Dimension.NONE, Domain.FRACTION));
  }

  /** Without class and reserve, which are left as the area. */
  static Before areas(Steps p) {
    Reference area = p.positive("A_0", "area left before this", Dimension.AREA);
    Reference first =
        p.any("S_0", "its first moment about the centroid", Dimension.SECTION_MODULUS);
    Reference second =
        p.positive("I_0", "its second moment about the centroid", Dimension.SECOND_MOMENT);
    return new Before(area, first, second, area, area);
  }

  /** Adds the sums after something is taken away. */
  static void after(Steps p, Before before, Reference lost, Expression middle, Expression height) {
    p.step("A", "area left", before.area().minus(lost), Clause.GEOMETRY);
    p.step("S", "first moment left", before.first().minus(lost.times(middle)), Clause.GEOMETRY);
    p.step(
        "I",
        "second moment left",
        before.second().minus(lost.times(middle.pow(2).plus(height.pow(2).over(12)))),
        Clause.GEOMETRY);
  }
}
