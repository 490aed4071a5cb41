package spanledger.resistance.joint;

import java.util.List;
import spanledger.procedure.Procedure;

/** The procedures of these checks, in the order in which they feed one another. */
public final class JointProcedures {

  private static final List<Procedure> ALL =
      List.of(
          PlateStrengths.EN1999,
          PlateStrengths.ADM,
          PlateStrengths.AS_NZS,
          Preload.BY_FRICTION,
          Preload.BY_TOOL,
          En1999BoltShear.PROCEDURE,
          FactoredBolts.ADM_SHEAR,
          FactoredBolts.AS_SHEAR,
          En1999BoltTension.TENSION,
          FactoredBolts.ADM_TENSION,
          FactoredBolts.AS_TENSION,
          En1999BoltTension.COMBINED,
          FactoredBolts.COMBINED,
          En1999Bearing.PROCEDURE,
          FactoredBearing.ADM,
          FactoredBearing.AS_NZS,
          Distances.EN1999,
          Distances.FACTORED,
          BlockTearing.EN1999,
          BlockTearing.ADM,
          BlockTearing.AS_NZS,
          Punching.PROCEDURE,
          Slip.EN1999,
          Slip.ADM,
          Slip.AS_NZS,
          Lip.IN_USE,
          Lip.ULTIMATE,
          Lip.TIGHTENED,
          LipEdge.PROCEDURE,
          Head.WINGS,
          Head.TURNING,
          Key.PROCEDURE,
          Wall.LOAD,
          Wall.STRIP,
          Leg.ULTIMATE,
          Leg.IN_USE,
          NetLine.SLANTS,
          NetLine.LINE,
          Leg.NET,
          TStubLeg.LENGTHS,
          Hardening.PROCEDURE,
          TStubLeg.MECHANISMS);

  private JointProcedures() {}

  /** All of them. */
  public static List<Procedure> all() {
    return ALL;
  }
}
