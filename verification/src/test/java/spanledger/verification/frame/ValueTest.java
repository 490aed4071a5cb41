package spanledger.verification.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.DynamicTest;

/** The test of one expected value of a frame case. */
final class ValueTest {

  private ValueTest() {}

  /**
   * One test.
   *
   * @param solved gives what is asked, in core units
   */
  static DynamicTest of(
      FrameCase one, FrameCase.Expected expected, ToDoubleFunction<JsonNode> solved) {
    return DynamicTest.dynamicTest(
        expected.words(),
        () ->
            assertThat(solved.applyAsDouble(expected.asked()) / expected.unit())
                .as(
                    "%s by %s, %s (%s); tolerance: %s",
                    expected.words(),
                    one.source().work(),
                    one.source().place(),
                    one.source().confidence(),
                    expected.tolerance().reason())
                .isCloseTo(expected.value(), within(expected.tolerance().of(expected.value()))));
  }
}
