package spanledger.verification.frame;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Runs the cases of what is not linear, and of frequencies; each expected value is a test of its
 * own. The files are written by {@code states.py} beside them from closed forms and published
 * values.
 */
class StateCasesTest {

  private static final List<String> FILES =
      List.of("second-order", "critical-loads", "joints-that-give", "one-way", "frequencies");

  /** A case with how it is solved. */
  private record Solvable(FrameCase one, boolean second, int pieces) {}

  @TestFactory
  Stream<DynamicNode> cases() {
    return FILES.stream()
        .map(file -> DynamicContainer.dynamicContainer(file, read(file).stream().map(this::tests)));
  }

  @Test
  void thereAreEnoughOfThem() {
    long values =
        FILES.stream()
            .flatMap(f -> read(f).stream())
            .mapToInt(c -> c.one().expected().size())
            .sum();
    assertThat(values).isGreaterThanOrEqualTo(150);
  }

  private DynamicNode tests(Solvable solvable) {
    FrameCase one = solvable.one();
    SolvedState solved = new SolvedState(one.frame(), solvable.second(), solvable.pieces());
    List<DynamicTest> tests = new ArrayList<>();
    solved
        .solved()
        .ifPresent(
            result ->
                tests.add(
                    DynamicTest.dynamicTest(
                        "balance of forces",
                        () -> assertThat(result.effort().residual()).isLessThan(one.balance()))));
    for (FrameCase.Expected expected : one.expected()) {
      tests.add(ValueTest.of(one, expected, solved::value));
    }
    return DynamicContainer.dynamicContainer(one.id() + ": " + one.description(), tests);
  }

  private static List<Solvable> read(String file) {
    try (InputStream in =
        Objects.requireNonNull(StateCasesTest.class.getResourceAsStream(file + ".json"), file)) {
      JsonNode content = new ObjectMapper().readTree(in);
      return content
          .required("cases")
          .valueStream()
          .map(
              c ->
                  new Solvable(
                      FrameCase.read(c, content.required("bars")),
                      c.path("order").asInt(2) == 2,
                      c.path("pieces").asInt(8)))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
