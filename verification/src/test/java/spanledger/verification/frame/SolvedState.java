package spanledger.verification.frame;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import spanledger.analysis.BeamColumnResponse;
import spanledger.analysis.InternalForces;
import spanledger.analysis.Reaction;
import spanledger.analysis.Side;
import spanledger.frame.Freedom;
import spanledger.frame.Node;
import spanledger.frame.Vector;
import spanledger.stability.CriticalFactor;
import spanledger.state.Condition;
import spanledger.state.HoldReport;
import spanledger.state.LoadState;
import spanledger.state.StateAnalysis;
import spanledger.state.StateOptions;
import spanledger.state.StateOutcome;
import spanledger.state.StateResult;
import spanledger.vibration.Masses;
import spanledger.vibration.Vibration;

/** A case solved as a state, to be asked for values: movements, forces, factors, frequencies. */
final class SolvedState {

  private static final double LIMIT = 1e9;

  private final GivenFrame given;
  private final StateAnalysis analysis;
  private final StateOutcome outcome;
  private final int pieces;
  private Optional<Vibration> vibration = Optional.empty();

  /**
   * Solves.
   *
   * @param second whether in second order
   * @param pieces per segment, for frequencies
   */
  SolvedState(GivenFrame given, boolean second, int pieces) {
    this.given = given;
    this.pieces = pieces;
    analysis =
        new StateAnalysis(
            given.frame(), second ? StateOptions.SECOND_ORDER : StateOptions.FIRST_ORDER);
    outcome = analysis.solve(LoadState.of(given.loads()));
  }

  /** Whether there is a result whose forces may be asked to balance. */
  Optional<StateResult> solved() {
    return outcome instanceof StateOutcome.Solved solved
        ? Optional.of(solved.result())
        : Optional.empty();
  }

  private StateResult result() {
    return solved().orElseThrow(() -> new AssertionError("This state has no solution: " + outcome));
  }

  /** The value that is asked for, core units. */
  double value(JsonNode asked) {
    double value = signed(asked);
    return asked.path("size").asBoolean(false) ? Math.abs(value) : value;
  }

  private double signed(JsonNode asked) {
    return switch (asked.required("what").asText()) {
      case "reaction" -> reaction(asked);
      case "movement" -> result().movement(node(asked), freedom(asked));
      case "axial" -> result().response(place(asked).segment()).meanForce();
      case "effect" -> effect(asked);
      case "critical" -> critical().factor();
      case "effectiveLength" -> Math.PI * Math.sqrt(1 / critical().factor());
      case "unstable" -> outcome instanceof StateOutcome.Unstable ? 1 : 0;
      case "open" -> holds(asked, Condition.OPEN);
      case "inPlay" -> holds(asked, Condition.IN_PLAY);
      case "frequency" -> vibration().modes().get(asked.required("mode").asInt() - 1).frequency();
      default -> throw new IllegalArgumentException("Unknown value " + asked);
    };
  }

  private CriticalFactor critical() {
    StateOutcome first = analysis.solveFirstOrder(LoadState.of(given.loads()));
    return analysis.critical(((StateOutcome.Solved) first).result(), LIMIT);
  }

  private Vibration vibration() {
    if (vibration.isEmpty()) {
      Masses masses = new Masses(List.of(new Masses.Part(given.loads(), 1)));
      vibration = Optional.of(Vibration.of(given.frame(), masses, 6, pieces));
    }
    return vibration.get();
  }

  /** 1 if the hold is in that condition, else 0. */
  private double holds(JsonNode asked, Condition condition) {
    String name = asked.required("hold").asText();
    HoldReport report =
        result().holds().stream().filter(h -> h.name().equals(name)).findFirst().orElseThrow();
    return report.condition() == condition ? 1 : 0;
  }

  private double reaction(JsonNode asked) {
    Reaction reaction = result().reaction(node(asked));
    Vector part = freedom(asked).isShift() ? reaction.force() : reaction.moment();
    return switch (freedom(asked)) {
      case SHIFT_X, TURN_X -> part.x();
      case SHIFT_Y, TURN_Y -> part.y();
      case SHIFT_Z, TURN_Z -> part.z();
    };
  }

  private GivenFrame.Place place(JsonNode asked) {
    return given.place(asked.required("member").asText(), asked.path("x").asDouble(0), side(asked));
  }

  private static Side side(JsonNode asked) {
    return asked.path("side").asText().equals("after") ? Side.AFTER : Side.BEFORE;
  }

  private double effect(JsonNode asked) {
    GivenFrame.Place place = place(asked);
    BeamColumnResponse response = result().response(place.segment());
    InternalForces forces = response.at(place.x(), side(asked));
    return switch (asked.required("effect").asText()) {
      case "N" -> forces.axial();
      case "V_y" -> forces.shearY();
      case "V_z" -> forces.shearZ();
      case "T" -> forces.torque();
      case "M_y" -> forces.momentY();
      case "M_z" -> forces.momentZ();
      case "d_y" -> response.deflectionY(place.x());
      case "d_z" -> response.deflectionZ(place.x());
      default -> throw new IllegalArgumentException("Unknown effect " + asked);
    };
  }

  private Node node(JsonNode asked) {
    return given.node(asked.required("node").asText());
  }

  private static Freedom freedom(JsonNode asked) {
    return GivenFrame.freedom(asked.required("freedom").asText());
  }
}
