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

/** Runs every case of the data files; each expected value is a test of its own. */
class FrameCasesTest {

  private static final List<String> FILES =
      List.of(
          "single-spans",
          "continuous-beams",
          "influence",
          "portals",
          "shear-flexible-beams",
          "joints-springs-arms",
          "space-frames");

  @TestFactory
  Stream<DynamicNode> cases() {
    return FILES.stream()
        .map(file -> DynamicContainer.dynamicContainer(file, read(file).stream().map(this::tests)));
  }

  @Test
  void thereAreEnoughOfThem() {
    long values =
        FILES.stream().flatMap(f -> read(f).stream()).mapToInt(c -> c.expected().size()).sum();
    assertThat(values).isGreaterThanOrEqualTo(300);
  }

  private DynamicNode tests(FrameCase one) {
    SolvedCase solved = new SolvedCase(one.frame());
    List<DynamicTest> tests = new ArrayList<>();
    tests.add(
        DynamicTest.dynamicTest(
            "balance of forces",
            () -> {
              assertThat(solved.result().equilibrium().nodeResidual()).isLessThan(one.balance());
              assertThat(solved.result().equilibrium().wholeResidual()).isLessThan(one.balance());
            }));
    for (FrameCase.Expected expected : one.expected()) {
      tests.add(ValueTest.of(one, expected, solved::value));
    }
    return DynamicContainer.dynamicContainer(one.id() + ": " + one.description(), tests);
  }

  private static List<FrameCase> read(String file) {
    try (InputStream in =
        Objects.requireNonNull(FrameCasesTest.class.getResourceAsStream(file + ".json"), file)) {
      JsonNode content = new ObjectMapper().readTree(in);
      return content
          .required("cases")
          .valueStream()
          .map(c -> FrameCase.read(c, content.required("bars")))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
