package spanledger.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import spanledger.assembly.Flight;
import spanledger.assembly.Guardrail;
import spanledger.assembly.Platform;
import spanledger.assembly.Stair;
import spanledger.assembly.StairSite;
import spanledger.procedure.CompiledProcedure;

/** The geometry of one flight of stairs against a rule set. */
final class FlightReview {

  private final Flight flight;
  private final Findings findings;
  private final String name;

  FlightReview(Flight flight, Findings findings) {
    this.flight = flight;
    this.findings = findings;
    this.name = flight.stair().name();
  }

  void run() {
    Stair stair = flight.stair();
    CompiledProcedure steps = StairSteps.PROCEDURE.compile();
    double[] values = steps.run(flight.totalRise(), stair.rises(), flight.going());
    double rise = values[steps.slot("R")];
    double step = values[steps.slot("S")];
    double pitch = values[steps.slot("θ")];
    findings.addStep(GeometryRule.RISE_LEAST, name, rise, "R");
    findings.addStep(GeometryRule.RISE_MOST, name, rise, "R");
    findings.add(GeometryRule.GOING_LEAST, name, flight.going(), "");
    findings.add(GeometryRule.GOING_MOST, name, flight.going(), "");
    findings.addStep(GeometryRule.STEP_LEAST, name, step, "S");
    findings.addStep(GeometryRule.STEP_MOST, name, step, "S");
    findings.addStep(GeometryRule.PITCH_LEAST, name, pitch, "θ");
    findings.addStep(GeometryRule.PITCH_MOST, name, pitch, "θ");
    findings.add(GeometryRule.RISES_MOST, name, stair.rises(), "");
    findings.add(GeometryRule.FLIGHT_HEIGHT_MOST, name, flight.totalRise(), "");
    reviewEquality(stair.site());
    findings.addGiven(
        GeometryRule.STAIR_WIDTH_LEAST, name, stair.site().clearWidth(), "clearWidth");
    findings.addGiven(GeometryRule.STAIR_HEADROOM_LEAST, name, stair.site().headroom(), "headroom");
    stair.rails().ifPresent(this::reviewRails);
    flight.lower().ifPresent(this::reviewLanding);
  }

  private void reviewEquality(StairSite site) {
    List<Double> built = site.builtRises();
    if (built.isEmpty()) {
      findings.addGiven(GeometryRule.RISE_DIFFERENCE_MOST, name, Optional.empty(), "builtRises");
      return;
    }
    double difference = Collections.max(built) - Collections.min(built);
    int worst = built.indexOf(Collections.max(built)) + 1;
    int least = built.indexOf(Collections.min(built)) + 1;
    findings.add(
        GeometryRule.RISE_DIFFERENCE_MOST,
        name,
        difference,
        "as measured, first and last included: rise "
            + worst
            + " is highest, rise "
            + least
            + " lowest");
  }

  private void reviewRails(Stair.StairRails rails) {
    findings.add(GeometryRule.STAIR_RAIL_LEAST, name, rails.height(), "");
    findings.add(GeometryRule.STAIR_RAIL_MOST, name, rails.height(), "");
    findings.add(
        GeometryRule.GUARDRAIL_GAP_MOST,
        name,
        RailGaps.greatest(0, heights(rails)),
        RailGaps.REMARK);
  }

  private static List<Double> heights(Stair.StairRails rails) {
    List<Double> heights = new ArrayList<>();
    rails.middleRails().stream().map(Guardrail.MiddleRail::height).forEach(heights::add);
    heights.add(rails.height());
    return heights;
  }

  /** A flight that rises from a platform makes a landing of it. */
  private void reviewLanding(Platform landing) {
    double length = flight.stair().side().isLong() ? landing.width() : landing.length();
    findings.add(
        GeometryRule.LANDING_LENGTH_LEAST, landing.name(), length, "along the way of " + name);
    findings.requireLimit(GeometryRule.LANDING_LENGTH_LEAST, landing.name());
  }
}
