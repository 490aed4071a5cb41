package spanledger.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import spanledger.action.RuleSet;
import spanledger.geometry.StairSolver.Answer;
import spanledger.geometry.StairSolver.Miss;
import spanledger.summary.Cautions;

/**
 * The stairs that a rule set allows, for people and for programs.
 *
 * @param height from the foot to the floor, mm
 * @param space the level length at hand, mm
 * @param rules the rule set
 * @param allowed what it allows
 * @param misses what comes nearest
 */
record StairAnswers(
    double height,
    Optional<Double> space,
    RuleSet rules,
    List<Answer> allowed,
    List<Answer> misses) {

  /** The version of the JSON form. */
  private static final int FORMAT_VERSION = 1;

  /** Lines for a terminal. */
  String text() {
    StringBuilder text = new StringBuilder();
    line(text, "Stairs over %.1f mm by rule set %s: %s", height, rules.id(), rules.title());
    space.ifPresent(
        length ->
            line(text, "in a level length of %.1f mm from the first nosing to the floor", length));
    line(text, "");
    if (allowed.isEmpty()) {
      line(text, "No number of rises is allowed.");
    } else {
      line(text, "%5s  %9s  %-22s %-18s %s", "rises", "rise", "going", "pitch", "length");
      for (Answer a : allowed) {
        line(
            text,
            "%5d  %6.1f mm  %-22s %-18s %s",
            a.rises(),
            a.rise(),
            range(a.goingLeast(), a.goingMost(), "mm"),
            range(pitch(a, a.goingMost()), pitch(a, a.goingLeast()), "deg"),
            range((a.rises() - 1) * a.goingLeast(), (a.rises() - 1) * a.goingMost(), "mm"));
      }
    }
    line(text, "");
    line(text, "Nearest misses:");
    for (Answer a : misses) {
      line(text, "%5d  %6.1f mm", a.rises(), a.rise());
      a.misses().forEach(miss -> line(text, "       %s", miss.words()));
    }
    line(text, "");
    Cautions.LINES.forEach(caution -> line(text, "%s", caution));
    return text.toString();
  }

  private static double pitch(Answer answer, double going) {
    return Double.isInfinite(going) ? 0 : Math.toDegrees(answer.pitch(going));
  }

  private static String range(double from, double to, String unit) {
    return Double.isInfinite(to)
        ? String.format(Locale.ROOT, "from %.1f %s", from, unit)
        : String.format(Locale.ROOT, "%.1f to %.1f %s", from, to, unit);
  }

  private static void line(StringBuilder text, String format, Object... values) {
    text.append(String.format(Locale.ROOT, format, values)).append('\n');
  }

  /** JSON text, lengths in mm and angles in rad, ending in a line break. */
  String json() {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("format", "spanledger-stairs");
    root.put("formatVersion", FORMAT_VERSION);
    root.put("rules", rules.id());
    root.put("height", height);
    space.ifPresent(length -> root.put("space", length));
    ArrayNode cautions = root.putArray("cautions");
    Cautions.LINES.forEach(cautions::add);
    ArrayNode good = root.putArray("allowed");
    for (Answer a : allowed) {
      ObjectNode one = good.addObject();
      one.put("rises", a.rises());
      one.put("rise", a.rise());
      one.put("goingLeast", a.goingLeast());
      one.put("pitchMost", a.pitch(a.goingLeast()));
      if (!Double.isInfinite(a.goingMost())) {
        one.put("goingMost", a.goingMost());
        one.put("pitchLeast", a.pitch(a.goingMost()));
      }
    }
    ArrayNode near = root.putArray("nearestMisses");
    for (Answer a : misses) {
      ObjectNode one = near.addObject();
      one.put("rises", a.rises());
      one.put("rise", a.rise());
      ArrayNode why = one.putArray("why");
      a.misses().stream().map(Miss::words).forEach(why::add);
    }
    try {
      return new ObjectMapper()
              .enable(SerializationFeature.INDENT_OUTPUT)
              .writeValueAsString(root)
              .replace("\r\n", "\n")
          + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("A tree of plain nodes can always be written.", e);
    }
  }
}
