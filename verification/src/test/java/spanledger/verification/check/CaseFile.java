package spanledger.verification.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.DynamicTest;

/** A data file of checks: each expected value is a test of its own. */
public final class CaseFile {

  private CaseFile() {}

  /**
   * The tests of a file beside a class.
   *
   * @param more the file holds more cases than this
   * @param values what a kind of case gives, by what is expected of it
   */
  public static Stream<DynamicNode> tests(
      Class<?> beside,
      String file,
      int more,
      BiFunction<String, JsonNode, Map<String, Double>> values)
      throws IOException {
    try (InputStream in = Objects.requireNonNull(beside.getResourceAsStream(file))) {
      List<JsonNode> cases =
          new ObjectMapper().readTree(in).required("cases").valueStream().toList();
      assertThat(cases).hasSizeGreaterThan(more);
      return cases.stream().map(one -> tests(one, values));
    }
  }

  private static DynamicNode tests(
      JsonNode one, BiFunction<String, JsonNode, Map<String, Double>> of) {
    Map<String, Double> values = of.apply(one.required("kind").asText(), one.required("given"));
    List<DynamicTest> tests = new ArrayList<>();
    for (JsonNode expected : one.required("expected")) {
      String what = expected.required("what").asText();
      double value = expected.required("value").asDouble();
      tests.add(
          DynamicTest.dynamicTest(
              what + " = " + value,
              () ->
                  assertThat(Objects.requireNonNull(values.get(what), what))
                      .as(
                          "%s by %s; tolerance: %s",
                          what,
                          one.required("source"),
                          expected.required("toleranceReason").asText())
                      .isCloseTo(value, within(expected.required("tolerance").asDouble()))));
    }
    return DynamicContainer.dynamicContainer(
        one.required("id").asText() + ": " + one.required("description").asText(), tests);
  }
}
