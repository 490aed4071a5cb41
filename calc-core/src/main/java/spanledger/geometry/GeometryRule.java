package spanledger.geometry;

import java.util.Arrays;
import java.util.Map;
import java.util.stream.Collectors;
import spanledger.action.RuleSet;
import spanledger.quantity.Dimension;

/** The figures of a rule set that limit geometry. Lengths in mm, angles in rad. */
public enum GeometryRule {
  RISE_LEAST("stair.rise-least", "rise", false),
  RISE_MOST("stair.rise-most", "rise", true),
  GOING_LEAST("stair.going-least", "going", false),
  GOING_MOST("stair.going-most", "going", true),
  STEP_LEAST("stair.step-least", "two rises and a going", false),
  STEP_MOST("stair.step-most", "two rises and a going", true),
  PITCH_LEAST("stair.pitch-least", "pitch", false),
  PITCH_MOST("stair.pitch-most", "pitch", true),
  RISE_DIFFERENCE_MOST("stair.rise-difference-most", "difference of rises", true),
  RISES_MOST("stair.rises-most", "rises in one flight", true),
  FLIGHT_HEIGHT_MOST("stair.flight-height-most", "height of one flight", true),
  STAIR_WIDTH_LEAST("stair.width-least", "clear width", false),
  STAIR_HEADROOM_LEAST("stair.headroom-least", "headroom", false),
  STAIR_RAIL_LEAST("stair.rail-height-least", "height of the rail over the nosings", false),
  STAIR_RAIL_MOST("stair.rail-height-most", "height of the rail over the nosings", true),
  LANDING_LENGTH_LEAST("landing.length-least", "length of the landing", false),
  WALKWAY_WIDTH_LEAST("walkway.width-least", "clear width", false),
  HEADROOM_LEAST("walkway.headroom-least", "headroom", false),
  GUARDRAIL_NEEDED_ABOVE("guardrail.needed-above", "height of an open side", true),
  GUARDRAIL_HEIGHT_LEAST(RuleSet.GUARDRAIL_HEIGHT_LEAST, "height of the guardrail", false),
  GUARDRAIL_HEIGHT_MOST(RuleSet.GUARDRAIL_HEIGHT_MOST, "height of the guardrail", true),
  GUARDRAIL_GAP_MOST("guardrail.gap-most", "gap between floor and rails", true),
  GUARDRAIL_GAP_ABOVE_TOE_MOST("guardrail.gap-above-toe-most", "gap above the toe-board", true),
  POST_SPACING_MOST("guardrail.post-spacing-most", "distance between guardrail posts", true),
  TOE_BOARD_HEIGHT_LEAST("toe-board.height-least", "height of the toe-board", false),
  TOE_BOARD_GAP_MOST("toe-board.gap-most", "gap under the toe-board", true),
  DECK_OPENING_MOST("deck.opening-most", "opening in the decking", true),
  DECK_OPENING_OVER_PEOPLE_MOST(
      "deck.opening-over-people-most", "opening in the decking over people", true);

  private final String id;
  private final String check;
  private final boolean atMost;

  GeometryRule(String id, String check, boolean atMost) {
    this.id = id;
    this.check = check;
    this.atMost = atMost;
  }

  /** The dimension of each figure that limits geometry, by its id. */
  public static Map<String, Dimension> dimensions() {
    return Arrays.stream(values())
        .collect(Collectors.toMap(GeometryRule::id, GeometryRule::dimension));
  }

  /** The id of the figure. */
  public String id() {
    return id;
  }

  /** What is limited, in words. */
  public String check() {
    return check;
  }

  /** Whether the figure is a greatest value and not a least one. */
  public boolean isAtMost() {
    return atMost;
  }

  /** The dimension of the figure; angles and numbers have none. */
  public Dimension dimension() {
    return switch (this) {
      case PITCH_LEAST, PITCH_MOST, RISES_MOST -> Dimension.NONE;
      default -> Dimension.LENGTH;
    };
  }
}
