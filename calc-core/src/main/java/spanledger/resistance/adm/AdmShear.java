package spanledger.resistance.adm;

import java.util.List;
import spanledger.procedure.CompiledProcedure;
import spanledger.resistance.member.BucklingLength;
import spanledger.resistance.member.Working;
import spanledger.section.plate.Plate;
import spanledger.section.plate.PlateKind;

/**
 * Shear and torsion of one section and metal.
 *
 * @param alongY a row with V_c
 * @param alongZ a row with V_c
 * @param torsion a row with T_c
 */
record AdmShear(Working alongY, Working alongZ, Working torsion) {

  private static final CompiledProcedure FLAT = ShearStrength.FLAT_WEBS.compile();
  private static final CompiledProcedure ROUND = ShearStrength.ROUND_TUBE.compile();

  static AdmShear of(MemberInputs inputs, SoftArea soft, String metal, List<Working> workings) {
    var section = inputs.member().section();
    Working y = run(inputs, soft, ShearWalls.along(section, false), "shear along y" + metal);
    Working z = run(inputs, soft, ShearWalls.along(section, true), "shear along z" + metal);
    Working torsion = run(inputs, soft, ShearWalls.around(section), "torsion" + metal);
    workings.addAll(List.of(y, z, torsion));
    return new AdmShear(y, z, torsion);
  }

  private static Working run(MemberInputs inputs, SoftArea soft, ShearWalls walls, String label) {
    Working.Feeding row =
        inputs
            .row(walls.isRound() ? ROUND : FLAT, label)
            .given("A_v", inputs.section(walls.area(), "area of the walls, " + label))
            .given("A_vn", soft.netShear(inputs, walls.area(), "area of the walls, " + label));
    if (walls.slenderest().isEmpty()) {
      // A solid bar has no wall that buckles.
      return row.given("b", MemberInputs.choice(1, "solid"))
          .given("t", MemberInputs.choice(1, "solid"))
          .given("edges", MemberInputs.choice(2, "solid"))
          .run();
    }
    Plate wall = walls.slenderest().get();
    row.given("t", inputs.section(wall.thickness(), wall.name() + ", thickness"));
    if (walls.isRound()) {
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
    boolean held = wall.kind() == PlateKind.INTERNAL;
    return row.given("b", inputs.section(wall.width(), wall.name() + ", width"))
        .given("edges", MemberInputs.choice(held ? 2 : 1, "how the wall is held"))
        .run();
  }
}
