package spanledger.verification.frame;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;

/**
 * One case of a data file.
 *
 * @param id unique in its file
 * @param description what it is
 * @param source where the expected values come from
 * @param frame the frame and its loads
 * @param expected the values to be met
 * @param balance how far forces at nodes and on the whole may be out of balance, per load
 */
record FrameCase(
    String id,
    String description,
    CitedSource source,
    GivenFrame frame,
    List<Expected> expected,
    double balance) {

  /** Left over by rounding, per load, where stiffnesses are those of real members. */
  private static final double USUAL_BALANCE = 1e-9;

  /** A work, the place in it, and how far it can be trusted, as printed in reports. */
  record CitedSource(String work, String place, String confidence) {
    static CitedSource read(JsonNode node) {
      return new CitedSource(
          node.required("work").asText(),
          node.required("place").asText(),
          node.required("confidence").asText());
    }
  }

  /**
   * How far a value may be off, and why no less.
   *
   * @param relative share of the expected value; 0 if the other is given
   * @param absolute in units of the expected value; 0 if the other is given
   * @param reason why
   */
  record Tolerance(double relative, double absolute, String reason) {
    static Tolerance read(JsonNode node) {
      JsonNode size = node.required("tolerance");
      return new Tolerance(
          size.path("relative").asDouble(),
          size.path("absolute").asDouble(),
          node.required("toleranceReason").asText());
    }

    double of(double value) {
      return absolute + relative * Math.abs(value);
    }
  }

  /**
   * A value to be met.
   *
   * @param asked which value; its fields depend on "what"
   * @param value in units
   * @param unit core units per unit
   * @param of the unit in symbols
   * @param tolerance how far it may be off
   */
  record Expected(JsonNode asked, double value, double unit, String of, Tolerance tolerance) {

    static Expected read(JsonNode node, Tolerance usual) {
      return new Expected(
          node,
          number(node.required("value")),
          node.required("unit").asDouble(),
          node.required("of").asText(),
          node.has("tolerance") ? Tolerance.read(node) : usual);
    }

    /** For the name of the test. */
    String words() {
      StringBuilder words = new StringBuilder(asked.required("what").asText());
      for (String field : List.of("effect", "member", "segment", "node", "freedom", "x", "side")) {
        if (asked.has(field)) {
          words.append(' ').append(asked.get(field).asText());
        }
      }
      if (asked.has("loadAt")) {
        words.append(", load at ").append(Math.round(asked.get("loadAt").asDouble()));
      }
      return words + " = " + asked.get("value").asText() + " " + of;
    }
  }

  static FrameCase read(JsonNode node, JsonNode bars) {
    Tolerance usual = Tolerance.read(node);
    List<Expected> expected =
        node.required("expected").valueStream().map(e -> Expected.read(e, usual)).toList();
    return new FrameCase(
        node.required("id").asText(),
        node.required("description").asText(),
        CitedSource.read(node.required("source")),
        GivenFrame.read(node.required("given"), bars),
        expected,
        node.path("balance").path("tolerance").asDouble(USUAL_BALANCE));
  }

  /** A number, or a fraction written as text. */
  static double number(JsonNode node) {
    if (node.isNumber()) {
      return node.asDouble();
    }
    String[] parts = node.asText().split("/", -1);
    return Double.parseDouble(parts[0]) / Double.parseDouble(parts[1]);
  }
}
