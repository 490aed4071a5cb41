package spanledger.verification.adm;

import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.TestFactory;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Procedure;
import spanledger.resistance.adm.BendingStrength;
import spanledger.resistance.adm.BentElement;
import spanledger.resistance.adm.BucklingConstants;
import spanledger.resistance.adm.CombinedStrength;
import spanledger.resistance.adm.CompressionStrength;
import spanledger.resistance.adm.LateralBucklingStrength;
import spanledger.resistance.adm.LippedElement;
import spanledger.resistance.adm.RoundElement;
import spanledger.resistance.adm.ShearStrength;
import spanledger.resistance.adm.TensionStrength;
import spanledger.resistance.adm.UniformElement;
import spanledger.resistance.asnzs1664.Bending;
import spanledger.resistance.asnzs1664.Column;
import spanledger.resistance.asnzs1664.CombinedActions;
import spanledger.resistance.asnzs1664.FlatElement;
import spanledger.resistance.asnzs1664.LateralBuckling;
import spanledger.resistance.asnzs1664.RoundWall;
import spanledger.resistance.asnzs1664.Shear;
import spanledger.resistance.asnzs1664.Tension;
import spanledger.verification.procedure.ProcedureCases;

/**
 * Runs the procedures on the cases of the data file, each with its source and units as published.
 */
class StrengthCasesTest {

  private static final Map<String, CompiledProcedure> PROCEDURES =
      Stream.of(
              BucklingConstants.ADM,
              BucklingConstants.AS_NZS,
              UniformElement.PROCEDURE,
              LippedElement.PROCEDURE,
              BentElement.BOTH_EDGES,
              BentElement.FREE_TIP,
              RoundElement.COMPRESSION,
              RoundElement.BENDING,
              CompressionStrength.PROCEDURE,
              LateralBucklingStrength.PROCEDURE,
              BendingStrength.PROCEDURE,
              TensionStrength.PROCEDURE,
              ShearStrength.FLAT_WEBS,
              ShearStrength.ROUND_TUBE,
              CombinedStrength.PROCEDURE,
              FlatElement.IN_COLUMN,
              FlatElement.IN_BEAM,
              spanledger.resistance.asnzs1664.BentElement.PROCEDURE,
              RoundWall.IN_COLUMN,
              RoundWall.IN_BEAM,
              Shear.FLAT_WEBS,
              Column.PROCEDURE,
              LateralBuckling.PROCEDURE,
              Bending.PROCEDURE,
              Tension.PROCEDURE,
              CombinedActions.PROCEDURE)
          .collect(Collectors.toMap(Procedure::name, Procedure::compile));

  @TestFactory
  Stream<DynamicNode> cases() {
    return ProcedureCases.read(StrengthCasesTest.class, "cases.json", 100, PROCEDURES);
  }
}
