package spanledger.overturning;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.action.Figure;
import spanledger.frame.Vector;
import spanledger.provenance.Source;

/**
 * How a structure stands, as its author describes it.
 *
 * @param anchored whether its feet are anchored, so that it need not stand by its weight
 * @param friction between feet and ground, if it is known
 * @param ballast weights put on it
 * @param wind on it, if it stands in any
 * @param ground how the ground lies
 * @param factors that replace factors of the combination rules, by id
 */
public record Standing(
    boolean anchored,
    Optional<Friction> friction,
    List<Ballast> ballast,
    Optional<Wind> wind,
    Ground ground,
    Map<String, Figure> factors) {

  public Standing {
    ballast = List.copyOf(ballast);
    factors = Map.copyOf(factors);
  }

  /** Standing freely on level ground, with nothing known beyond. */
  public static final Standing FREE =
      new Standing(false, Optional.empty(), List.of(), Optional.empty(), Ground.LEVEL, Map.of());

  /**
   * The friction between feet and ground.
   *
   * @param coefficient design value, level force per weight; greater than zero
   * @param source the test or reference it comes from
   */
  public record Friction(double coefficient, Source source) {}

  /**
   * A weight put on the structure.
   *
   * @param name what it is, unique
   * @param place where its centre lies, global, mm
   * @param mass kg; zero where ballast may be put, but is not yet
   * @param source where place and mass come from
   */
  public record Ballast(String name, Vector place, double mass, Source source) {}

  /**
   * Sloping ground on which the feet may slide as on a plane.
   *
   * @param slope angle from level, rad
   * @param downhill level direction in which it falls, of length 1
   */
  public record Ground(double slope, Vector downhill) {

    /** Level ground. */
    public static final Ground LEVEL = new Ground(0, new Vector(1, 0, 0));
  }
}
