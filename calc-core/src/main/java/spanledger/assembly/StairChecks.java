package spanledger.assembly;

import java.util.Locale;
import java.util.Optional;
import spanledger.frame.Vector;

/** Works out where the stairs run and finds those that cannot be built. */
final class StairChecks {

  /** Steeper than this is a ladder. Common practice, no source. */
  private static final double STEEPEST = Math.toRadians(60);

  /** What a foot can step up or forward at all, mm; rule sets are far narrower. */
  private static final double LEAST_RISE = 80;

  /** Stringers are no nearer than this, mm; rule sets ask for far more. */
  private static final double LEAST_WIDTH = 200;

  private static final double GREATEST_RISE = 350;
  private static final double LEAST_GOING = 100;
  private static final double GREATEST_GOING = 1000;

  private final Assembly assembly;

  StairChecks(Assembly assembly) {
    this.assembly = assembly;
  }

  /** Where a flight runs, or nothing after its problems are told. */
  Optional<Flight> line(Stair stair, Problems.At at) {
    Optional<Platform> upper = platform(stair.to(), at.at("to"));
    Optional<Platform> lower = stair.from().flatMap(name -> platform(name, at.at("from")));
    if (upper.isEmpty() || (stair.from().isPresent() && lower.isEmpty())) {
      return Optional.empty();
    }
    if (lower.isPresent() && stair.to().equals(stair.from().orElse(""))) {
      at.at("from").add("the platform that it leads up to", "a lower one", "correct the name");
      return Optional.empty();
    }
    double foot = lower.map(Platform::floorLevel).orElse(stair.ground());
    double total = upper.get().floorLevel() - foot;
    stair.rails().ifPresent(r -> RailHeights.check(0, r.middleRails(), r.height(), at.at("rails")));
    boolean wideEnough = checkWidth(stair, upper.get(), at);
    boolean steppable = checkRises(stair, total, at);
    if (!wideEnough || !steppable) {
      return Optional.empty();
    }
    return going(stair, upper.get(), lower, total, at)
        .map(going -> new Flight(stair, upper.get(), lower, total, going))
        .filter(line -> fits(line, at));
  }

  private Optional<Platform> platform(String name, Problems.At at) {
    Optional<Platform> platform = assembly.platform(name);
    if (platform.isEmpty()) {
      at.add(
          "\"" + name + "\", but no platform has this name",
          "one of " + String.join(", ", assembly.platforms().stream().map(Platform::name).toList()),
          "correct the name");
    }
    return platform;
  }

  private static boolean checkWidth(Stair stair, Platform upper, Problems.At at) {
    double side = upper.lengthOf(stair.side());
    double end = stair.offset() + stair.width();
    if (stair.offset() >= 0 && end <= side + Draft.SAME_PLACE && stair.width() >= LEAST_WIDTH) {
      return true;
    }
    at.at("width")
        .add(
            "a flight from "
                + Problems.mm(stair.offset())
                + " to "
                + Problems.mm(end)
                + " of the "
                + stair.side().words()
                + " side, which is "
                + Problems.mm(side)
                + " long",
            side - stair.offset() < LEAST_WIDTH
                ? "an offset of at most " + Problems.mm(side - LEAST_WIDTH)
                : "a flight within the side: here from "
                    + Problems.mm(LEAST_WIDTH)
                    + " to "
                    + Problems.mm(side - stair.offset())
                    + " wide",
            "correct \"width\" or \"offset\"");
    return false;
  }

  private static boolean checkRises(Stair stair, double total, Problems.At at) {
    double rise = total / stair.rises();
    if (total >= 2 * LEAST_RISE
        && rise >= LEAST_RISE
        && rise <= GREATEST_RISE
        && stair.rises() >= 2) {
      return true;
    }
    int least = Math.max(2, (int) Math.ceil(total / GREATEST_RISE));
    int most = (int) Math.floor(total / LEAST_RISE);
    at.at("rises")
        .add(
            stair.rises()
                + " rises over "
                + Problems.mm(total)
                + ", that is "
                + Problems.mm(rise)
                + " each",
            total < 2 * LEAST_RISE
                ? "a floor at least "
                    + Problems.mm(2 * LEAST_RISE)
                    + " above the foot of the flight"
                : "rises of "
                    + Problems.mm(LEAST_RISE)
                    + " to "
                    + Problems.mm(GREATEST_RISE)
                    + ": from "
                    + least
                    + " to "
                    + most
                    + " of them",
            total < 2 * LEAST_RISE
                ? "correct the heights of the floors"
                : "correct \"rises\"; \"spanledger stairs\" lists what a rule set allows");
    return false;
  }

  private static Optional<Double> going(
      Stair stair, Platform upper, Optional<Platform> lower, double total, Problems.At at) {
    double rise = total / stair.rises();
    Optional<Double> given =
        stair.going().or(() -> stair.pitch().map(pitch -> rise / Math.tan(pitch)));
    if (lower.isEmpty()) {
      if (given.isEmpty()) {
        at.add(
            "neither going nor pitch",
            "one of the two, because only between two platforms their distance decides it",
            "give \"going\" or \"pitch\"");
      }
      return given;
    }
    double space = space(stair, upper, lower.get());
    double fitting = space / stair.rises();
    if (fitting < LEAST_GOING) {
      at.at("from")
          .add(
              "the "
                  + stair.side().opposite().words()
                  + " side of "
                  + lower.get().name()
                  + " "
                  + Problems.mm(space)
                  + " outside the "
                  + stair.side().words()
                  + " side of "
                  + upper.name(),
              "room for the flight: at least " + Problems.mm(stair.rises() * LEAST_GOING),
              "move one of the platforms");
      return Optional.empty();
    }
    if (given.isPresent() && Math.abs(given.get() * stair.rises() - space) > Draft.SAME_PLACE) {
      at.at(stair.going().isPresent() ? "going" : "pitch")
          .add(
              "a flight "
                  + Problems.mm(given.get() * stair.rises())
                  + " long in a space of "
                  + Problems.mm(space)
                  + " between "
                  + upper.name()
                  + " and "
                  + lower.get().name(),
              String.format(
                  Locale.ROOT,
                  "a going of %s (a pitch of %s), or platforms %s apart",
                  Problems.mm(fitting),
                  Problems.degrees(Math.atan(rise / fitting)),
                  Problems.mm(given.get() * stair.rises())),
              "leave it out, or move one of the platforms");
      return Optional.empty();
    }
    return Optional.of(fitting);
  }

  /** How far the facing side of the lower platform is outside the side of the upper one. */
  private static double space(Stair stair, Platform upper, Platform lower) {
    Vector from = upper.onSide(stair.side(), 0);
    return lower.onSide(stair.side().opposite(), 0).minus(from).dot(stair.side().outward());
  }

  private static boolean fits(Flight line, Problems.At at) {
    double pitch = Math.atan(line.rise() / line.going());
    if (line.going() < LEAST_GOING || line.going() > GREATEST_GOING || pitch > STEEPEST) {
      double least = Math.max(LEAST_GOING, line.rise() / Math.tan(STEEPEST));
      at.at(line.stair().pitch().isPresent() ? "pitch" : "going")
          .add(
              String.format(
                  Locale.ROOT,
                  "a going of %s with rises of %s, a pitch of %s",
                  Problems.mm(line.going()),
                  Problems.mm(line.rise()),
                  Problems.degrees(pitch)),
              String.format(
                  Locale.ROOT,
                  "a stair: a going from %s to %s, a pitch from %s to %s",
                  Problems.mm(Math.ceil(least)),
                  Problems.mm(GREATEST_GOING),
                  Problems.degrees(Math.atan(line.rise() / GREATEST_GOING)),
                  Problems.degrees(Math.atan(line.rise() / Math.ceil(least)))),
              "correct it; \"spanledger stairs\" lists what a rule set allows");
      return false;
    }
    if (line.lower().isEmpty()) {
      return true;
    }
    Platform lower = line.lower().get();
    double side = lower.lengthOf(line.stair().side().opposite());
    double from = Math.min(line.alongLower(lower, true), line.alongLower(lower, false));
    if (from >= -Draft.SAME_PLACE && from + line.stair().width() <= side + Draft.SAME_PLACE) {
      return true;
    }
    at.at("offset")
        .add(
            "a flight whose foot is from "
                + Problems.mm(from)
                + " to "
                + Problems.mm(from + line.stair().width())
                + " of the "
                + line.stair().side().opposite().words()
                + " side of "
                + lower.name(),
            "a foot on that side, which is " + Problems.mm(side) + " long",
            "move the flight or the platform");
    return false;
  }
}
