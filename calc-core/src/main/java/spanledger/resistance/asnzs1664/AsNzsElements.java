package spanledger.resistance.asnzs1664;

import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;
import spanledger.resistance.adm.ElementInputs;
import spanledger.resistance.adm.LocalBuckling;
import spanledger.resistance.adm.MemberInputs;
import spanledger.resistance.adm.SectionElement;
import spanledger.resistance.adm.Symbols;
import spanledger.resistance.member.Working;

/** Design stresses of elements by AS/NZS 1664.1. */
final class AsNzsElements implements LocalBuckling.Strengths {

  /** What stocky parts bear. Inputs F_cy, φ_y, k_c; steps F_0_c, F_0_b. */
  static final Procedure STOCKY = stockyProcedure();

  private static final CompiledProcedure STOCKY_RUN = STOCKY.compile();
  private static final CompiledProcedure COLUMN = FlatElement.IN_COLUMN.compile();
  private static final CompiledProcedure BEAM = FlatElement.IN_BEAM.compile();
  private static final CompiledProcedure BENT = BentElement.PROCEDURE.compile();
  private static final CompiledProcedure ROUND_COLUMN = RoundWall.IN_COLUMN.compile();
  private static final CompiledProcedure ROUND_BEAM = RoundWall.IN_BEAM.compile();

  private final ElementInputs walls;
  private final Working stocky;

  /**
   * @param inputs with the buckling constants of the metal
   */
  AsNzsElements(MemberInputs inputs, String label) {
    walls = new ElementInputs(inputs);
    stocky = inputs.row(STOCKY_RUN, label).run();
  }

  private static Procedure stockyProcedure() {
    Procedure.Builder p =
        Procedure.named("as-nzs-1664-stocky", "Design stress of stocky parts, AS/NZS 1664.1");
    Reference yield = Symbols.compressionYield(p);
    Reference yielding = Given.factor(p, "y", "yielding");
    Reference knee = Given.knee(p);
    p.step(
        "F_0_c",
        "of a column",
        Dimension.STRESS,
        yielding.times(yield).over(knee),
        Given.clause("3.4.9 and 3.4.10"));
    p.step(
        "F_0_b",
        "of the outermost fibre of a beam",
        Dimension.STRESS,
        yielding.times(yield).times(1.3),
        Given.clause("3.4.14 and 3.4.18"));
    return p.build();
  }

  @Override
  public Working stocky() {
    return stocky;
  }

  @Override
  public Working of(SectionElement element, boolean column, String label) {
    return switch (element.loading()) {
      // A lip is left out: an outstand with a free edge.
      case UNIFORM, LIPPED ->
          walls
              .flat(column ? COLUMN : BEAM, element, label)
              .given("edges", ElementInputs.edges(element))
              .given("post", walls.post(element, column, "strength after buckling counts"))
              .run();
      case BENT, BENT_TIP ->
          walls.flat(BENT, element, label).given("edges", ElementInputs.edges(element)).run();
      // A curved wall yields no higher than a flat one, so the rule of columns serves for both.
      case CURVED -> walls.round(ROUND_COLUMN, element, label);
      case ROUND -> walls.round(column ? ROUND_COLUMN : ROUND_BEAM, element, label);
    };
  }
}
