package spanledger.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import spanledger.action.LoadAxes;
import spanledger.frame.Vector;
import spanledger.job.reading.Reading;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedArray;
import spanledger.job.source.Located.LocatedNumber;
import spanledger.job.source.Located.LocatedText;

/** Decodes directions: {@code "-Z"}, {@code "local -z"} or three numbers. */
final class Directions {

  private static final Pattern GLOBAL = Pattern.compile("([+-]?)([XYZ])");
  private static final Pattern LOCAL = Pattern.compile("local ([+-]?)([xyz])");
  private static final Map<String, Vector> AXES =
      Map.of("X", new Vector(1, 0, 0), "Y", new Vector(0, 1, 0), "Z", new Vector(0, 0, 1));

  /** How far from level an outward direction may point, as a sine. */
  private static final double LEVELNESS = 1e-3;

  /**
   * A direction and the axes in which it is given.
   *
   * @param axes global or the segment's own
   * @param unit of length 1
   */
  record Direction(LoadAxes axes, Vector unit) {}

  private final Reading reading;

  Directions(Reading reading) {
    this.reading = reading;
  }

  /** A global direction, or one of a member's own axes. */
  Optional<Direction> any(Located value) {
    if (value instanceof LocatedText text) {
      Matcher local = LOCAL.matcher(text.text());
      if (local.matches()) {
        return Optional.of(new Direction(LoadAxes.LOCAL, axis(local)));
      }
    }
    return global(value).map(unit -> new Direction(LoadAxes.GLOBAL, unit));
  }

  /** A level global direction. */
  Optional<Vector> level(Located value) {
    Optional<Vector> unit = global(value);
    if (unit.isPresent() && Math.abs(unit.get().z()) > LEVELNESS) {
      reading.error(
          value,
          "a direction that rises or falls",
          "a level direction, for example \"+Y\" or [0, 1, 0]",
          "make its Z part 0");
      return Optional.empty();
    }
    return unit.map(u -> new Vector(u.x(), u.y(), 0).unit());
  }

  private Optional<Vector> global(Located value) {
    if (value instanceof LocatedText text) {
      Matcher global = GLOBAL.matcher(text.text());
      if (global.matches()) {
        return Optional.of(axis(global));
      }
    } else if (value instanceof LocatedArray list && list.elements().size() == 3) {
      return ofNumbers(list);
    }
    reading.gap(value.pointer());
    return Optional.empty();
  }

  private Optional<Vector> ofNumbers(LocatedArray list) {
    List<Double> parts = new ArrayList<>();
    for (Located element : list.elements()) {
      if (!(element instanceof LocatedNumber number)) {
        reading.gap(element.pointer());
      } else if (Math.abs(number.value()) > 1e100) {
        reading.error(number, number.words(), "a number of usual size", "correct the number");
      } else {
        parts.add(number.value());
      }
    }
    if (parts.size() < 3) {
      return Optional.empty();
    }
    Vector vector = new Vector(parts.get(0), parts.get(1), parts.get(2));
    if (vector.norm() == 0) {
      reading.error(
          list, "the direction 0, 0, 0", "at least one number other than 0", "correct the numbers");
      return Optional.empty();
    }
    return Optional.of(vector.unit());
  }

  private static Vector axis(Matcher matcher) {
    Vector positive = AXES.getOrDefault(matcher.group(2).toUpperCase(Locale.ROOT), Vector.ZERO);
    return matcher.group(1).equals("-") ? Vector.ZERO.minus(positive) : positive;
  }
}
