package spanledger.assembly;

import java.util.Set;
import java.util.TreeSet;

/** Finds what does not fit in a platform's bracing. */
final class BracingChecks {

  /** Joints of one member are no nearer than this, mm. Common practice, no source. */
  private static final double LEAST_APART = 20;

  private final Platform platform;
  private final Problems.At at;

  BracingChecks(Platform platform, Problems.At at) {
    this.platform = platform;
    this.at = at;
  }

  void run() {
    Bracing bracing = platform.bracing();
    bracing
        .ties()
        .ifPresent(ties -> level(at.at("ties", "height"), ties.height(), highestGround()));
    bracing.crosses().ifPresent(this::check);
    bracing.knees().ifPresent(this::check);
    bracing.plan().ifPresent(plan -> numbers(at.at("planBraces", "bays"), plan.bays(), bays()));
  }

  private int bays() {
    return platform.bays().size();
  }

  private double highestGround() {
    return platform.posts().ground().values().stream()
        .mapToDouble(Double::doubleValue)
        .reduce(0, Math::max);
  }

  /** A level at which braces meet posts: at the floor, at the ground, or well between. */
  private void level(Problems.At here, double level, double least) {
    double most = platform.floorHeight();
    boolean atEnd =
        level == most || (level == 0 && least == 0 && platform.posts().ground().isEmpty());
    if (!atEnd && (level < least + LEAST_APART || level > most - LEAST_APART)) {
      here.add(
          Problems.mm(level) + " above the ground",
          "a height on every post: from "
              + Problems.mm(least + LEAST_APART)
              + " to "
              + Problems.mm(most - LEAST_APART),
          "correct the height");
    }
  }

  private void check(CrossBraces crosses) {
    Problems.At here = at.at("crossBraces");
    level(here.at("from"), crosses.from(), highestGround());
    level(here.at("to"), crosses.to(), highestGround());
    if (crosses.to() < crosses.from() + LEAST_APART) {
      here.at("to")
          .add(
              Problems.mm(crosses.to()) + ", with lower ends at " + Problems.mm(crosses.from()),
              "more than " + Problems.mm(crosses.from() + LEAST_APART),
              "correct one of the two");
    }
    numbers(here.at("bays"), crosses.bays(), bays());
  }

  private void check(KneeBraces knees) {
    Problems.At here = at.at("kneeBraces");
    double deepest = platform.floorHeight() - highestGround() - LEAST_APART;
    if (knees.drop() < LEAST_APART || knees.drop() > deepest) {
      here.at("drop")
          .add(
              Problems.mm(knees.drop()) + " below the floor",
              "from " + Problems.mm(LEAST_APART) + " to " + Problems.mm(deepest),
              "correct it");
    }
    numbers(here.at("lines"), knees.lines(), bays() + 1);
    double room =
        Math.min(
            knees.across() ? platform.width() : Double.POSITIVE_INFINITY,
            knees.along()
                ? platform.bays().stream().min(Double::compare).orElse(0.0)
                : Double.POSITIVE_INFINITY);
    double most = (room - LEAST_APART) / 2;
    if (knees.reach() < LEAST_APART || knees.reach() > most) {
      here.at("reach")
          .add(
              Problems.mm(knees.reach()) + " from the post",
              "less than half of the "
                  + (room == platform.width() ? "width" : "bay")
                  + ": from "
                  + Problems.mm(LEAST_APART)
                  + " to "
                  + Problems.mm(most),
              "correct it");
    }
    if (knees.across()
        && platform.bearers().fromEnds() > 0
        && platform.endBeams().isEmpty()
        && (knees.lines().isEmpty()
            || knees.lines().contains(1)
            || knees.lines().contains(bays() + 1))) {
      here.add(
          "knee braces at the end posts, where no bearer lies",
          "knee braces at pairs of posts with a bearer"
              + (bays() > 1 ? ": lines from 2 to " + bays() : ""),
          "name the lines, add \"endBeams\", or put the first bearer at 0 mm from the ends");
    }
  }

  private static void numbers(Problems.At here, Set<Integer> given, int most) {
    for (int number : new TreeSet<>(given)) {
      if (number < 1 || number > most) {
        here.add(String.valueOf(number), "a number from 1 to " + most, "correct it");
      }
    }
  }
}
