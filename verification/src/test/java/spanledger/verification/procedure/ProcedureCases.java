package spanledger.verification.procedure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.DynamicTest;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Input;
import spanledger.procedure.Procedure;
import spanledger.tables.QuantityReader;

/** Turns a data file of runs of procedures into tests, each value with its source and tolerance. */
public final class ProcedureCases {

  private ProcedureCases() {}

  /**
   * The cases of a file beside a test.
   *
   * @param test the class that the file lies beside
   * @param least how many cases there must be at least
   * @param procedures by name
   */
  public static Stream<DynamicNode> read(
      Class<?> test, String file, int least, Map<String, CompiledProcedure> procedures) {
    try (InputStream in = Objects.requireNonNull(test.getResourceAsStream(file))) {
      List<JsonNode> cases =
          new ObjectMapper().readTree(in).required("cases").valueStream().toList();
      assertThat(cases).hasSizeGreaterThanOrEqualTo(least);
      return cases.stream()
          .map(
              one -> {
                String name = one.required("procedure").asText();
                return tests(one, Objects.requireNonNull(procedures.get(name), name));
              });
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static DynamicNode tests(JsonNode one, CompiledProcedure procedure) {
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
