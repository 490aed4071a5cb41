package spanledger.resistance.adm;

import java.util.List;
import spanledger.resistance.member.BucklingLength;
import spanledger.resistance.member.MemberSection;
import spanledger.resistance.member.Working;
import spanledger.section.plate.Plate;

/**
 * Shear and torsion of one section and metal.
 *
 * @param alongY a row with V_c
 * @param alongZ a row with V_c
 * @param torsion a row with T_c
 */
public record MetalShear(Working alongY, Working alongZ, Working torsion) {

  /** How one publication starts the row of walls in shear. */
  @FunctionalInterface
  public interface Rule {

    /**
     * A row of the procedure for such walls that has all but the sizes of the slenderest: b and t,
     * or of a round tube R_b, t and L_v.
     */
    Working.Feeding start(MemberInputs inputs, ShearWalls walls, String label);
  }

  /**
   * Works out both directions and torsion.
   *
   * @param metal added to labels, for example {@code , beside welds}
   * @param workings where rows are added
   */
  public static MetalShear of(
      MemberInputs inputs, Rule rule, String metal, List<Working> workings) {
    MemberSection section = inputs.member().section();
    Working y = run(inputs, rule, ShearWalls.along(section, false), "shear along y" + metal);
    Working z = run(inputs, rule, ShearWalls.along(section, true), "shear along z" + metal);
    Working torsion = run(inputs, rule, ShearWalls.around(section), "torsion" + metal);
    workings.addAll(List.of(y, z, torsion));
    return new MetalShear(y, z, torsion);
  }

  private static Working run(MemberInputs inputs, Rule rule, ShearWalls walls, String label) {
    Working.Feeding row = rule.start(inputs, walls, label);
    if (walls.slenderest().isEmpty()) {
      // A solid bar has no wall that buckles.
      return row.given("b", MemberInputs.choice(1, "solid"))
          .given("t", MemberInputs.choice(1, "solid"))
          .run();
    }
    Plate wall = walls.slenderest().get();
    row.given("t", inputs.section(wall.thickness(), wall.name() + ", thickness"));
    if (!walls.isRound()) {
      return row.given("b", inputs.section(wall.width(), wall.name() + ", width")).run();
    }
    double length =
        inputs.member().lengths().values().stream()
            .mapToDouble(BucklingLength::length)
            .max()
            .orElseThrow();
    double radius = (wall.width() - wall.thickness()) / 2;
    return row.given("R_b", inputs.section(radius, wall.name() + ", radius"))
        .given("L_v", MemberInputs.choice(length, "the longest buckling length"))
        .run();
  }
}
