package spanledger.action;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The loads, limits and factors that a standard asks for, as data.
 *
 * @param id short name, for example {@code as-1657}
 * @param title the standards it stands for
 * @param figures by id
 * @param railDirections the directions in which guardrail loads act, one at a time
 * @param format the format of safety that its resistance factor belongs to, see {@link
 *     CombinationSet#format}; empty if it does not say
 */
public record RuleSet(
    String id,
    String title,
    Map<String, Figure> figures,
    List<RailDirection> railDirections,
    Optional<String> format) {

  /** Imposed load on floors, MPa. */
  public static final String FLOOR_AREA = "floor.area";

  /** Imposed load at any one place on floors, N. */
  public static final String FLOOR_POINT = "floor.point";

  /** Side of the square that the load at one place stands on, mm. */
  public static final String FLOOR_POINT_PATCH = "floor.point-patch";

  /** Imposed load along any one floor member, N/mm. */
  public static final String FLOOR_LINE = "floor.line";

  /**
   * Side of the square that the load at one place stands on when it is set against decking, mm;
   * that of floors if left out.
   */
  public static final String DECK_POINT_PATCH = "deck.point-patch";

  /** Load at any one place on treads, N; that of floors if left out. */
  public static final String TREAD_POINT = "tread.point";

  /** Side of the square that the load on a tread stands on, mm; that of decking if left out. */
  public static final String TREAD_POINT_PATCH = "tread.point-patch";

  /** Load along a tread, N/mm; none if left out. */
  public static final String TREAD_LINE = "tread.line";

  /** Load along the top rail, N/mm. */
  public static final String GUARDRAIL_LINE = "guardrail.line";

  /** Load at any one place of the top rail, N. */
  public static final String GUARDRAIL_POINT = "guardrail.point";

  /** Load at any one place of a middle rail, N. */
  public static final String MIDRAIL_POINT = "midrail.point";

  /** Least height of the top rail above the floor, mm. */
  public static final String GUARDRAIL_HEIGHT_LEAST = "guardrail.height-least";

  /** Greatest height of the top rail above the floor, mm. */
  public static final String GUARDRAIL_HEIGHT_MOST = "guardrail.height-most";

  /** Deflection of floor members as a fraction of their span. */
  public static final String FLOOR_DEFLECTION_RATIO = "limit.floor-deflection-ratio";

  /** Greatest deflection of floor members, mm. */
  public static final String FLOOR_DEFLECTION = "limit.floor-deflection";

  /** Deflection of treads as a fraction of their span; limits of floors hold if left out. */
  public static final String TREAD_DEFLECTION_RATIO = "limit.tread-deflection-ratio";

  /** Greatest deflection of treads, mm. */
  public static final String TREAD_DEFLECTION = "limit.tread-deflection";

  /** Greatest movement of a rail or post under guardrail loads, mm. */
  public static final String RAIL_DEFLECTION = "limit.rail-deflection";

  /** Level movement of the frame as a fraction of its height. */
  public static final String SWAY_DEFLECTION_RATIO = "limit.sway-ratio";

  /** Factor φ on the yield resistance. */
  public static final String RESISTANCE_FACTOR = "resistance.factor";

  /** Divisor γ of the yield resistance. */
  public static final String RESISTANCE_DIVISOR = "resistance.divisor";

  /** Notional level force as a fraction of the vertical load. */
  public static final String NOTIONAL_SWAY = "notional.sway";

  /** Critical load factor from which a first-order analysis suffices. */
  public static final String CRITICAL_FACTOR = "analysis.critical-factor";

  /** Least natural frequency of modes that move up and down, 1/s. */
  public static final String VERTICAL_FREQUENCY = "limit.frequency-vertical";

  /** Least natural frequency of modes that move sideways or twist, 1/s. */
  public static final String LATERAL_FREQUENCY = "limit.frequency-lateral";

  /** Share of the imposed floor load whose mass swings with the structure. */
  public static final String VIBRATING_SHARE = "vibration.imposed-share";

  /** Share of the imposed loads that acts while a brace is left out. */
  public static final String ROBUSTNESS_SHARE = "robustness.imposed-share";

  /** Critical load factor that a frame must exceed while a brace is left out. */
  public static final String ROBUSTNESS_FACTOR = "robustness.critical-factor";

  public RuleSet {
    figures = Map.copyOf(figures);
    railDirections = List.copyOf(railDirections);
  }

  /** A set that does not say its format. */
  public RuleSet(
      String id, String title, Map<String, Figure> figures, List<RailDirection> railDirections) {
    this(id, title, figures, railDirections, Optional.empty());
  }

  /** A figure, if this set has it. */
  public Optional<Figure> find(String figureId) {
    return Optional.ofNullable(figures.get(figureId));
  }

  /**
   * A figure that every rule set must have.
   *
   * @throws IllegalArgumentException if this set lacks it
   */
  public Figure figure(String figureId) {
    return find(figureId)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "Rule set " + id + " has no figure " + figureId + "."));
  }

  /** The figures in order of their ids. */
  public List<Figure> inOrder() {
    return List.copyOf(new TreeMap<>(figures).values());
  }

  /** Whether a figure takes the alloy's strength to what members may be asked for. */
  public static boolean isOfResistance(String figureId) {
    return figureId.equals(RESISTANCE_FACTOR) || figureId.equals(RESISTANCE_DIVISOR);
  }

  /**
   * This set with one figure replaced or added. Who replaces a figure of resistance answers for the
   * format.
   */
  public RuleSet with(Figure figure) {
    Map<String, Figure> changed = new TreeMap<>(figures);
    changed.put(figure.id(), figure);
    return new RuleSet(
        id,
        title,
        changed,
        railDirections,
        isOfResistance(figure.id()) ? Optional.empty() : format);
  }
}
