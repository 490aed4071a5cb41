package spanledger.resistance.asnzs1664;

import spanledger.procedure.CompiledProcedure;
import spanledger.resistance.adm.MemberInputs;
import spanledger.resistance.adm.MetalShear;
import spanledger.resistance.adm.ShearWalls;
import spanledger.resistance.adm.SoftArea;
import spanledger.resistance.member.Working;

/** Walls in shear by AS/NZS 1664.1: their net area counts throughout. */
record AsNzsShear(SoftArea soft) implements MetalShear.Rule {

  private static final CompiledProcedure FLAT = Shear.FLAT_WEBS.compile();
  private static final CompiledProcedure ROUND = Shear.ROUND_TUBE.compile();

  @Override
  public Working.Feeding start(MemberInputs inputs, ShearWalls walls, String label) {
    return inputs
        .row(walls.isRound() ? ROUND : FLAT, label)
        .given("A_v", soft.netShear(inputs, walls.area(), "area of the walls, " + label));
  }
}
