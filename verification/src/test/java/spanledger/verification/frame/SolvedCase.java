package spanledger.verification.frame;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import spanledger.action.LoadCase;
import spanledger.action.SegmentLoad;
import spanledger.analysis.CaseResult;
import spanledger.analysis.Extreme;
import spanledger.analysis.FrameAnalysis;
import spanledger.analysis.InternalForces;
import spanledger.analysis.NodeInfluence;
import spanledger.analysis.Reaction;
import spanledger.analysis.SegmentEffect;
import spanledger.analysis.SegmentInfluence;
import spanledger.analysis.SegmentResponse;
import spanledger.analysis.Side;
import spanledger.frame.Freedom;
import spanledger.frame.Node;
import spanledger.frame.Segment;
import spanledger.frame.Vector;

/** A case that has been analysed, to be asked for values. */
final class SolvedCase {

  private static final Map<String, SegmentEffect> EFFECTS =
      Map.of(
          "N", SegmentEffect.AXIAL,
          "V_y", SegmentEffect.SHEAR_Y,
          "V_z", SegmentEffect.SHEAR_Z,
          "T", SegmentEffect.TORQUE,
          "M_y", SegmentEffect.MOMENT_Y,
          "M_z", SegmentEffect.MOMENT_Z,
          "d_y", SegmentEffect.DEFLECTION_Y,
          "d_z", SegmentEffect.DEFLECTION_Z);

  private final GivenFrame given;
  private final FrameAnalysis analysis;
  private final Map<Node, NodeInfluence> influences = new HashMap<>();

  SolvedCase(GivenFrame given) {
    this.given = given;
    this.analysis = new FrameAnalysis(given.frame());
  }

  CaseResult result() {
    return result(given.loads());
  }

  private CaseResult result(LoadCase loads) {
    return analysis.solve(List.of(loads)).results().get(0);
  }

  /** The value that is asked for, core units. */
  double value(JsonNode asked) {
    if (asked.has("sweep")) {
      return swept(asked);
    }
    return switch (asked.required("what").asText()) {
      case "reaction" -> reaction(asked);
      case "movement" -> result().movement(node(asked), freedom(asked));
      case "effect" -> effect(response(asked, cut(asked).segment()), asked, cut(asked).x());
      case "greatest" -> ofSegment(asked).greatest(effect(asked)).value();
      case "least" -> ofSegment(asked).least(effect(asked)).value();
      case "placeOfLeast" -> ofSegment(asked).least(effect(asked)).x();
      default -> throw new IllegalArgumentException("Unknown value " + asked);
    };
  }

  /** The worst over a row of places of the moving load. */
  private double swept(JsonNode asked) {
    JsonNode sweep = asked.get("sweep");
    double from = sweep.required("from").asDouble();
    double to = sweep.required("to").asDouble();
    int steps = sweep.required("steps").asInt();
    boolean least = asked.required("what").asText().toLowerCase(Locale.ROOT).endsWith("least");
    DoubleUnaryOperator at =
        place -> {
          if (asked.required("what").asText().startsWith("effect")) {
            GivenFrame.Place cut = cut(asked);
            return effect(moved(place, cut.segment()), asked, cut.x());
          }
          Segment segment = given.segment(member(asked), asked.required("segment").asInt());
          SegmentResponse response = moved(place, segment);
          Extreme extreme =
              least ? response.least(effect(asked)) : response.greatest(effect(asked));
          return extreme.value();
        };
    double worst = 0;
    for (int i = 0; i <= steps; i++) {
      double value = at.applyAsDouble(from + i * (to - from) / steps);
      worst = least ? Math.min(worst, value) : Math.max(worst, value);
    }
    return worst;
  }

  private double reaction(JsonNode asked) {
    CaseResult result =
        asked.has("loadAt")
            ? result(
                new LoadCase(
                    "moving", List.of(), List.of(given.movingAt(asked.get("loadAt").asDouble()))))
            : result();
    Reaction reaction = result.reaction(node(asked));
    Vector part = freedom(asked).isShift() ? reaction.force() : reaction.moment();
    return switch (freedom(asked)) {
      case SHIFT_X, TURN_X -> part.x();
      case SHIFT_Y, TURN_Y -> part.y();
      case SHIFT_Z, TURN_Z -> part.z();
    };
  }

  private SegmentResponse ofSegment(JsonNode asked) {
    return response(asked, given.segment(member(asked), asked.required("segment").asInt()));
  }

  private SegmentResponse response(JsonNode asked, Segment segment) {
    if (asked.has("loadAt")) {
      return moved(asked.get("loadAt").asDouble(), segment);
    }
    return analysis.solve(List.of(given.loads())).response(segment, given.loads());
  }

  /** The response to the moving load, from the responses to unit loads on nodes. */
  private SegmentResponse moved(double place, Segment target) {
    SegmentLoad load = given.movingAt(place);
    Segment loaded = load.segment();
    return new SegmentInfluence(
            analysis, loaded, influence(loaded.first()), influence(loaded.second()))
        .place(load)
        .response(target);
  }

  private NodeInfluence influence(Node node) {
    return influences.computeIfAbsent(node, n -> new NodeInfluence(analysis, n));
  }

  private static double effect(SegmentResponse response, JsonNode asked, double x) {
    InternalForces forces = response.at(x, side(asked));
    return switch (effect(asked)) {
      case AXIAL -> forces.axial();
      case SHEAR_Y -> forces.shearY();
      case SHEAR_Z -> forces.shearZ();
      case TORQUE -> forces.torque();
      case MOMENT_Y -> forces.momentY();
      case MOMENT_Z -> forces.momentZ();
      case DEFLECTION_Y -> response.deflectionY(x);
      case DEFLECTION_Z -> response.deflectionZ(x);
    };
  }

  private static SegmentEffect effect(JsonNode asked) {
    return EFFECTS.get(asked.required("effect").asText());
  }

  private static String member(JsonNode asked) {
    return asked.required("member").asText();
  }

  private GivenFrame.Place cut(JsonNode asked) {
    return given.place(member(asked), asked.required("x").asDouble(), side(asked));
  }

  private static Side side(JsonNode asked) {
    return asked.path("side").asText().equals("after") ? Side.AFTER : Side.BEFORE;
  }

  private Node node(JsonNode asked) {
    return given.node(asked.required("node").asText());
  }

  private static Freedom freedom(JsonNode asked) {
    return GivenFrame.freedom(asked.required("freedom").asText());
  }
}
