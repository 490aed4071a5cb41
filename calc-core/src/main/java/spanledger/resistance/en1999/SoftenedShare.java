package spanledger.resistance.en1999;

import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.number;

import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/** How much of the area welds along the member leave. */
final class SoftenedShare {

  static final Procedure PROCEDURE = define();

  private SoftenedShare() {}

  private static Procedure define() {
    Steps p = new Steps("softened-share", "Area that welds along a member leave, EN 1999-1-1");
    Reference area = p.positive("A", "area that local buckling leaves", Dimension.AREA);
    Reference soft =
        p.positive("A_haz", "area that softening beside welds leaves of it", Dimension.AREA);
    p.step(
        "a_1",
        "area less softening per area",
        min(number(1), soft.over(area)),
        Clause.of("Table 6.5, A_1 / A"));
    return p.build();
  }
}
