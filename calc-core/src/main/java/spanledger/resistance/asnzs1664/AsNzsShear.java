package spanledger.resistance.asnzs1664;

import java.util.List;
import spanledger.procedure.CompiledProcedure;
import spanledger.resistance.adm.MemberInputs;
import spanledger.resistance.adm.ShearWalls;
import spanledger.resistance.adm.SoftArea;
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
record AsNzsShear(Working alongY, Working alongZ, Working torsion) {

  private static final CompiledProcedure FLAT = Shear.FLAT_WEBS.compile();
  private static final CompiledProcedure ROUND = Shear.ROUND_TUBE.compile();

  static AsNzsShear of(MemberInputs inputs, SoftArea soft, String metal, List<Working> workings) {
    MemberSection section = inputs.member().section();
    Working y = run(inputs, soft, ShearWalls.along(section, false), "shear along y" + metal);
    Working z = run(inputs, soft, ShearWalls.along(section, true), "shear along z" + metal);
    Working torsion = run(inputs, soft, ShearWalls.around(section), "torsion" + metal);
    workings.addAll(List.of(y, z, torsion));
    return new AsNzsShear(y, z, torsion);
  }

  private static Working run(MemberInputs inputs, SoftArea soft, ShearWalls walls, String label) {
    Working.Feeding row =
        inputs
            .row(walls.isRound() ? ROUND : FLAT, label)
            .given("A_v", soft.netShear(inputs, walls.area(), "area of the walls, " + label));
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
