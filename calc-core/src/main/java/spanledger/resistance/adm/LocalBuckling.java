package spanledger.resistance.adm;

import java.util.List;
import spanledger.procedure.CompiledProcedure;
import spanledger.resistance.member.MemberSection;
import spanledger.resistance.member.Working;

/** Runs the elements of a section one after the other and gathers what they leave of it. */
public final class LocalBuckling {

  private static final CompiledProcedure COLUMN_START = ElementRows.COMPRESSION_START.compile();
  private static final CompiledProcedure COLUMN = ElementRows.COMPRESSION.compile();
  private static final CompiledProcedure BEAM_START = ElementRows.BENDING_START.compile();
  private static final CompiledProcedure BEAM = ElementRows.BENDING.compile();

  /** How one publication works out the strength of an element. */
  public interface Strengths {

    /** What stocky parts bear: a row with F_0_c of a column and F_0_b of any fibre of a beam. */
    Working stocky();

    /**
     * Works an element out.
     *
     * @param column whether of a column
     * @return a row with F_c and F_e
     */
    Working of(SectionElement element, boolean column, String label);
  }

  private final MemberInputs inputs;
  private final Strengths strengths;
  private final String metal;
  private final List<Working> workings;

  /**
   * @param metal added to labels, for example {@code , beside welds}
   * @param workings where rows are added
   */
  public LocalBuckling(
      MemberInputs inputs, Strengths strengths, String metal, List<Working> workings) {
    this.inputs = inputs;
    this.strengths = strengths;
    this.metal = metal;
    this.workings = workings;
  }

  /** A row with P_lb and F_e_lb. */
  public Working column() {
    Working sum =
        add(
            inputs
                .row(COLUMN_START, "compression" + metal)
                .with("F_0", strengths.stocky().feed("F_0_c"))
                .run());
    for (SectionElement element : SectionElement.ofColumn(section())) {
      String label = element.plate().name() + ", compression" + metal;
      Working strength = add(strengths.of(element, true, label));
      sum =
          add(
              inputs
                  .row(COLUMN, label)
                  .from(sum, "P_lb_0", "P_lb")
                  .from(sum, "F_e_lb_0", "F_e_lb")
                  .with("F_0", strengths.stocky().feed("F_0_c"))
                  .from(strength, "F_c", "F_c")
                  .from(strength, "F_e", "F_e")
                  .given(
                      "b",
                      inputs.section(element.developedWidth(), element.plate().name() + ", width"))
                  .given(
                      "t",
                      inputs.section(
                          element.plate().thickness(), element.plate().name() + ", thickness"))
                  .run());
    }
    return sum;
  }

  /** A row with M_lb and F_e_fl. */
  public Working beam(BendingSide side) {
    Working limit =
        add(
            inputs
                .row(BEAM_START, side.words() + metal)
                .with("F_0", strengths.stocky().feed("F_0_b"))
                .given("I", inputs.section(side.moment(section()), "second moment of area"))
                .given("c", inputs.section(side.compressed(section()), "compressed fibre"))
                .run());
    for (SectionElement element : SectionElement.ofBeam(section(), side)) {
      String label = element.plate().name() + ", " + side.words() + metal;
      Working strength = add(strengths.of(element, false, label));
      boolean flange =
          element.loading() == SectionElement.Loading.UNIFORM
              || element.loading() == SectionElement.Loading.LIPPED;
      limit =
          add(
              inputs
                  .row(BEAM, label)
                  .from(limit, "M_lb_0", "M_lb")
                  .from(limit, "F_e_fl_0", "F_e_fl")
                  .from(strength, "F_c", "F_c")
                  .from(strength, "F_e", "F_e")
                  .given("I", inputs.section(side.moment(section()), "second moment of area"))
                  .given(
                      "c",
                      inputs.section(element.near(), element.plate().name() + ", compressed edge"))
                  .given("flange", MemberInputs.choice(flange ? 1 : 0, "how the wall is stressed"))
                  .run());
    }
    return limit;
  }

  private MemberSection section() {
    return inputs.member().section();
  }

  private Working add(Working working) {
    workings.add(working);
    return working;
  }
}
