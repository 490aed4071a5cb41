package spanledger.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import spanledger.assembly.GeneratedFrame;
import spanledger.assembly.Guardrail;
import spanledger.assembly.Platform;
import spanledger.assembly.RailStretch;
import spanledger.assembly.Side;

/** The geometry of one platform against a rule set. */
final class PlatformReview {

  private final Platform platform;
  private final GeneratedFrame frame;
  private final Findings findings;
  private final String name;

  PlatformReview(Platform platform, GeneratedFrame frame, Findings findings) {
    this.platform = platform;
    this.frame = frame;
    this.findings = findings;
    this.name = platform.name();
  }

  void run() {
    findings.addGiven(
        GeometryRule.WALKWAY_WIDTH_LEAST, name, platform.site().clearWidth(), "clearWidth");
    findings.addGiven(GeometryRule.HEADROOM_LEAST, name, platform.site().headroom(), "headroom");
    GeometryRule opening =
        platform.site().peopleBelow()
            ? GeometryRule.DECK_OPENING_OVER_PEOPLE_MOST
            : GeometryRule.DECK_OPENING_MOST;
    findings.addGiven(opening, name, widestOpening(), "deckOpening");
    findings.requireLimit(opening, name);
    reviewOpenSides();
    platform.guardrail().ifPresent(this::reviewGuardrail);
  }

  private void reviewOpenSides() {
    List<String> open =
        Stream.of(Side.values())
            .filter(
                side -> platform.guardrail().map(rail -> !rail.sides().contains(side)).orElse(true))
            .map(Side::words)
            .toList();
    if (!open.isEmpty()) {
      findings.requireLimit(GeometryRule.GUARDRAIL_NEEDED_ABOVE, name);
      findings.add(
          GeometryRule.GUARDRAIL_NEEDED_ABOVE,
          name,
          platform.floorHeight(),
          "without a guardrail: " + String.join(", ", open));
    }
  }

  private void reviewGuardrail(Guardrail rail) {
    findings.add(GeometryRule.GUARDRAIL_HEIGHT_LEAST, name, rail.height(), "");
    findings.add(GeometryRule.GUARDRAIL_HEIGHT_MOST, name, rail.height(), "");
    List<Double> heights = new ArrayList<>();
    rail.middleRails().stream().map(Guardrail.MiddleRail::height).forEach(heights::add);
    heights.add(rail.height());
    double toeTop = rail.toeBoard().map(toe -> toe.gap() + toe.height()).orElse(0.0);
    findings.add(
        GeometryRule.GUARDRAIL_GAP_MOST, name, RailGaps.greatest(toeTop, heights), RailGaps.REMARK);
    rail.toeBoard()
        .ifPresent(
            toe ->
                findings.add(
                    GeometryRule.GUARDRAIL_GAP_ABOVE_TOE_MOST,
                    name,
                    heights.get(0) - toeTop,
                    "to the centre line of the rail above"));
    findings.add(
        GeometryRule.TOE_BOARD_HEIGHT_LEAST,
        name,
        rail.toeBoard().map(Guardrail.ToeBoard::height).orElse(0.0),
        rail.toeBoard().isPresent() ? "" : "there is no toe-board");
    rail.toeBoard()
        .ifPresent(toe -> findings.add(GeometryRule.TOE_BOARD_GAP_MOST, name, toe.gap(), ""));
    widest()
        .ifPresent(
            stretch ->
                findings.add(
                    GeometryRule.POST_SPACING_MOST, name, stretch.length(), words(stretch)));
  }

  /** The widest opening that the place or the panels of the deck are said to have. */
  private Optional<Double> widestOpening() {
    return Stream.concat(platform.site().deckOpening().stream(), platform.deck().opening().stream())
        .max(Double::compare);
  }

  /** The widest stretch between two posts of the guardrail. */
  Optional<RailStretch> widest() {
    return frame.stretches().stream()
        .filter(stretch -> stretch.platform().equals(name))
        .reduce((one, other) -> other.length() > one.length() + 1e-6 ? other : one);
  }

  static String words(RailStretch stretch) {
    return (stretch.isGate() ? "the gate on the " : "widest on the ")
        + stretch.side().words()
        + " side";
  }
}
