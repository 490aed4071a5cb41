package spanledger.job;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import spanledger.assembly.Bracing;
import spanledger.assembly.CrossBraces;
import spanledger.assembly.KneeBraces;
import spanledger.assembly.Part;
import spanledger.assembly.PlanBraces;
import spanledger.assembly.Side;
import spanledger.assembly.Ties;
import spanledger.job.reading.Fields;

/** Decodes what keeps platforms from swaying. */
final class BracingDecoder {

  private static final List<Side> USUAL_SIDES = List.of(Side.NORTH, Side.SOUTH);

  /** Which floor members knee braces go to. */
  private enum Direction {
    ACROSS,
    ALONG,
    BOTH
  }

  private static final Map<String, Direction> DIRECTIONS =
      Map.of("across", Direction.ACROSS, "along", Direction.ALONG, "both", Direction.BOTH);

  private final AssemblyFields values;

  BracingDecoder(AssemblyFields values) {
    this.values = values;
  }

  /** The bracing that a platform names; empty if it has faults. */
  Optional<Bracing> decode(Fields platform) {
    Optional<Ties> ties = kind(platform, "ties", this::ties);
    Optional<CrossBraces> crosses = kind(platform, "crossBraces", this::crosses);
    Optional<KneeBraces> knees = kind(platform, "kneeBraces", this::knees);
    Optional<PlanBraces> plan = kind(platform, "planBraces", this::plan);
    boolean sound =
        platform.has("ties") == ties.isPresent()
            && platform.has("crossBraces") == crosses.isPresent()
            && platform.has("kneeBraces") == knees.isPresent()
            && platform.has("planBraces") == plan.isPresent();
    return sound ? Optional.of(new Bracing(ties, crosses, knees, plan)) : Optional.empty();
  }

  private <T> Optional<T> kind(Fields platform, String key, Function<Fields, Optional<T>> decoder) {
    return platform
        .find(key)
        .flatMap(value -> values.reading().fields(key, value))
        .flatMap(decoder);
  }

  private Optional<Ties> ties(Fields fields) {
    Optional<Part> part = values.part(fields, "part");
    Optional<Double> height = values.distance(fields, "height");
    Optional<Set<Side>> sides = values.sides(fields, USUAL_SIDES);
    return part.isPresent() && height.isPresent() && sides.isPresent()
        ? Optional.of(new Ties(part.get(), height.get(), sides.get()))
        : Optional.empty();
  }

  private Optional<CrossBraces> crosses(Fields fields) {
    Optional<Part> part = values.part(fields, "part");
    Optional<Double> from = values.distance(fields, "from");
    Optional<Double> to = values.distance(fields, "to");
    Optional<Set<Side>> sides = values.sides(fields, USUAL_SIDES);
    Optional<Set<Integer>> bays = values.counts(fields, "bays");
    return part.isPresent()
            && from.isPresent()
            && to.isPresent()
            && sides.isPresent()
            && bays.isPresent()
        ? Optional.of(new CrossBraces(part.get(), from.get(), to.get(), sides.get(), bays.get()))
        : Optional.empty();
  }

  private Optional<KneeBraces> knees(Fields fields) {
    Optional<Part> part = values.part(fields, "part");
    Optional<Double> drop = values.size(fields, "drop");
    Optional<Double> reach = values.size(fields, "reach");
    Optional<Direction> direction = values.word(fields, "direction", DIRECTIONS, Direction.ACROSS);
    Optional<Set<Integer>> lines = values.counts(fields, "lines");
    return part.isPresent()
            && drop.isPresent()
            && reach.isPresent()
            && direction.isPresent()
            && lines.isPresent()
        ? Optional.of(
            new KneeBraces(
                part.get(),
                drop.get(),
                reach.get(),
                direction.get() != Direction.ALONG,
                direction.get() != Direction.ACROSS,
                lines.get()))
        : Optional.empty();
  }

  private Optional<PlanBraces> plan(Fields fields) {
    Optional<Part> part = values.part(fields, "part");
    Optional<Set<Integer>> bays = values.counts(fields, "bays");
    return part.isPresent() && bays.isPresent()
        ? Optional.of(new PlanBraces(part.get(), bays.get()))
        : Optional.empty();
  }
}
