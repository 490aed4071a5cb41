package spanledger.workbook.content;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import spanledger.frame.Restraint;
import spanledger.workbook.layout.NumberAt;

/** Where springs of member ends are worked out in the workbook, before the analysis uses them. */
final class SpringCells {

  private record Spring(NumberAt stiffness, Optional<NumberAt> play) {}

  private final IdentityHashMap<Restraint, Spring> springs = new IdentityHashMap<>();
  private final Map<String, NumberAt> tested = new HashMap<>();

  /**
   * Adds a spring; it is known by the very object.
   *
   * @param play movement before it bears, if there is any
   */
  void add(Restraint spring, NumberAt stiffness, Optional<NumberAt> play) {
    springs.put(spring, new Spring(stiffness, play));
  }

  /** Adds the characteristic moment of tests. */
  void addTested(String origin, NumberAt moment) {
    tested.put(origin, moment);
  }

  /** The stiffness of a spring, if it is worked out. */
  Optional<NumberAt> stiffness(Restraint spring) {
    return Optional.ofNullable(springs.get(spring)).map(Spring::stiffness);
  }

  /** The movement before a spring bears, if it is worked out. */
  Optional<NumberAt> play(Restraint spring) {
    return Optional.ofNullable(springs.get(spring)).flatMap(Spring::play);
  }

  /** The characteristic moment of tests. */
  NumberAt tested(String origin) {
    return Required.of(tested.get(origin), origin);
  }
}
