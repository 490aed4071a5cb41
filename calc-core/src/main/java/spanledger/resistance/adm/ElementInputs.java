package spanledger.resistance.adm;

import spanledger.procedure.CompiledProcedure;
import spanledger.resistance.member.Figured;
import spanledger.resistance.member.Working;
import spanledger.section.plate.Plate;

/**
 * What rows of elements take from the section.
 *
 * @param inputs with the buckling constants of the metal
 */
public record ElementInputs(MemberInputs inputs) {

  /** Starts the row of a flat wall with its b and t. */
  public Working.Feeding flat(CompiledProcedure procedure, SectionElement element, String label) {
    Plate plate = element.plate();
    return inputs
        .row(procedure, label)
        .given("b", inputs.section(plate.width(), plate.name() + ", width"))
        .given("t", inputs.section(plate.thickness(), plate.name() + ", thickness"));
  }

  /** The row of a curved wall or round tube: R_b and t. */
  public Working round(CompiledProcedure procedure, SectionElement element, String label) {
    Plate plate = element.plate();
    return inputs
        .row(procedure, label)
        .given("R_b", inputs.section(element.radius(), plate.name() + ", radius to mid-thickness"))
        .given("t", inputs.section(plate.thickness(), plate.name() + ", thickness"))
        .run();
  }

  /** How many edges hold the wall. */
  public static Figured edges(SectionElement element) {
    return MemberInputs.choice(element.edges(), "how the wall is held");
  }

  /**
   * Whether an element has strength after it buckles; an outstand of a column has none unless the
   * section is doubly symmetric.
   *
   * @param counting said where it has
   */
  public Figured post(SectionElement element, boolean column, String counting) {
    boolean symmetric = inputs.member().section().doublySymmetric();
    boolean counts = !column || symmetric || element.edges() == 2;
    return MemberInputs.choice(
        counts ? 1 : 0, counts ? counting : "outstand of a column that is not doubly symmetric");
  }
}
