package spanledger.verification.adm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Input;
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
import spanledger.tables.QuantityReader;

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
  Stream<DynamicNode> cases() throws IOException {
    try (InputStream in =
        Objects.requireNonNull(StrengthCasesTest.class.getResourceAsStream("cases.json"))) {
      List<JsonNode> cases =
          new ObjectMapper().readTree(in).required("cases").valueStream().toList();
      assertThat(cases).hasSizeGreaterThan(100);
      return cases.stream().map(StrengthCasesTest::tests);
    }
  }

  private static DynamicNode tests(JsonNode one) {
    String name = one.required("procedure").asText();
    CompiledProcedure procedure = Objects.requireNonNull(PROCEDURES.get(name), name);
    double[] values = procedure.run(inputs(procedure.procedure(), one.required("given")));
    return DynamicContainer.dynamicContainer(
        one.required("id").asText() + ": " + one.required("says").asText(),
        one.required("expected")
            .valueStream()
            .map(expected -> test(one, procedure, values, expected)));
  }

  private static DynamicTest test(
      JsonNode one, CompiledProcedure procedure, double[] values, JsonNode expected) {
    String symbol = expected.required("symbol").asText();
    String text = expected.required("value").asText();
    return DynamicTest.dynamicTest(
        symbol + " = " + text,
        () -> {
          double value =
              QuantityReader.read(text, procedure.procedure().symbol(symbol).dimension());
          assertThat(values[procedure.slot(symbol)])
              .as(
                  "%s by %s; tolerance: %s",
                  symbol, one.required("source").asText(), expected.required("reason").asText())
              .isCloseTo(value, within(Math.abs(value) * expected.required("relative").asDouble()));
        });
  }

  private static double[] inputs(Procedure procedure, JsonNode given) {
    Map<String, Input> bySymbol =
        procedure.inputs().stream()
            .collect(Collectors.toMap(input -> input.symbol().symbol(), Function.identity()));
    assertThat(given.propertyStream().map(Map.Entry::getKey))
        .as("inputs of " + procedure.name())
        .containsExactlyInAnyOrderElementsOf(bySymbol.keySet());
    return procedure.inputs().stream()
        .mapToDouble(
            input ->
                QuantityReader.read(
                    given.required(input.symbol().symbol()).asText(), input.symbol().dimension()))
        .toArray();
  }
}
