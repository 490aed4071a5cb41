package spanledger.resistance.adm;

import spanledger.procedure.CompiledProcedure;
import spanledger.resistance.member.Figured;
import spanledger.resistance.member.Working;
import spanledger.section.plate.PlateKind;

/**
 * Walls in shear by the Aluminum Design Manual: they yield over their whole area and rupture over
 * their net one.
 */
record AdmShear(SoftArea soft) implements MetalShear.Rule {

  private static final CompiledProcedure FLAT = ShearStrength.FLAT_WEBS.compile();
  private static final CompiledProcedure ROUND = ShearStrength.ROUND_TUBE.compile();

  @Override
  public Working.Feeding start(MemberInputs inputs, ShearWalls walls, String label) {
    String origin = "area of the walls, " + label;
    Working.Feeding row =
        inputs
            .row(walls.isRound() ? ROUND : FLAT, label)
            .given("A_v", inputs.section(walls.area(), origin))
            .given("A_vn", soft.netShear(inputs, walls.area(), origin));
    return walls.isRound() ? row : row.given("edges", edges(walls));
  }

  private static Figured edges(ShearWalls walls) {
    return walls
        .slenderest()
        .map(
            wall ->
                MemberInputs.choice(
                    wall.kind() == PlateKind.INTERNAL ? 2 : 1, "how the wall is held"))
        .orElseGet(() -> MemberInputs.choice(2, "solid"));
  }
}
