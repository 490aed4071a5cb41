package spanledger.verification.joint;

import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.TestFactory;
import spanledger.procedure.CompiledProcedure;
import spanledger.resistance.joint.JointProcedures;
import spanledger.verification.procedure.ProcedureCases;

/** Runs the procedures of joints on the cases of the data file, each with its source. */
class JointCasesTest {

  private static final Map<String, CompiledProcedure> PROCEDURES =
      JointProcedures.all().stream()
          .map(procedure -> procedure.compile())
          .collect(Collectors.toMap(one -> one.procedure().name(), Function.identity()));

  @TestFactory
  Stream<DynamicNode> cases() {
    return ProcedureCases.read(JointCasesTest.class, "cases.json", 135, PROCEDURES);
  }
}
