package spanledger.resistance.adm;

import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.resistance.member.Working;
import spanledger.section.plate.Plate;

/** Strengths of elements by the Aluminum Design Manual 2020. */
final class AdmElements implements LocalBuckling.Strengths {

  /** What stocky parts bear. Input F_cy; steps F_0_c, F_0_b. */
  static final Procedure STOCKY = stockyProcedure();

  private static final CompiledProcedure STOCKY_RUN = STOCKY.compile();
  private static final CompiledProcedure UNIFORM = UniformElement.PROCEDURE.compile();
  private static final CompiledProcedure ROUND = RoundElement.COMPRESSION.compile();
  private static final CompiledProcedure ROUND_BENT = RoundElement.BENDING.compile();
  private static final CompiledProcedure LIPPED = LippedElement.PROCEDURE.compile();
  private static final CompiledProcedure BENT = BentElement.BOTH_EDGES.compile();
  private static final CompiledProcedure BENT_TIP = BentElement.FREE_TIP.compile();

  private final MemberInputs inputs;
  private final ElementInputs walls;
  private final Working stocky;

  /**
   * @param inputs with the buckling constants of the metal
   */
  AdmElements(MemberInputs inputs, String label) {
    this.inputs = inputs;
    walls = new ElementInputs(inputs);
    stocky = inputs.row(STOCKY_RUN, label).run();
  }

  private static Procedure stockyProcedure() {
    Procedure.Builder p =
        Procedure.named("adm-stocky", "Strength of stocky parts, Aluminum Design Manual");
    Reference yield = Symbols.compressionYield(p);
    String work = "Aluminum Design Manual 2020";
    p.step("F_0_c", "of a column", Dimension.STRESS, yield, Source.fromMemory(work, "E.4"));
    p.step(
        "F_0_b",
        "of the outermost fibre of a beam",
        Dimension.STRESS,
        yield.times(1.5),
        Source.fromMemory(work, "F.2"));
    return p.build();
  }

  @Override
  public Working stocky() {
    return stocky;
  }

  @Override
  public Working of(SectionElement element, boolean column, String label) {
    return switch (element.loading()) {
      case UNIFORM ->
          walls
              .flat(UNIFORM, element, label)
              .given("edges", ElementInputs.edges(element))
              .given("post", walls.post(element, column, "post-buckling strength counts"))
              .run();
      case BENT ->
          walls
              .flat(BENT, element, label)
              .given(
                  "c_c",
                  inputs.section(element.near(), element.plate().name() + ", compressed edge"))
              .given("c_o", inputs.section(element.far(), element.plate().name() + ", other edge"))
              .run();
      case BENT_TIP -> walls.flat(BENT_TIP, element, label).run();
      case LIPPED -> lipped(element, label);
      case CURVED -> walls.round(ROUND, element, label);
      case ROUND -> walls.round(column ? ROUND : ROUND_BENT, element, label);
    };
  }

  private Working lipped(SectionElement element, String label) {
    Plate lip = element.lip().orElseThrow();
    return walls
        .flat(LIPPED, element, label)
        .given("d_s", inputs.section(lip.width(), lip.name() + ", width"))
        .given("t_s", inputs.section(lip.thickness(), lip.name() + ", thickness"))
        .given("θ_s", inputs.section(element.lipAngle(), lip.name() + ", angle to its wall"))
        .run();
  }
}
