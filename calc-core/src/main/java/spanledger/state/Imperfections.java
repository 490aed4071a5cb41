package spanledger.state;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import spanledger.action.LoadAxes;
import spanledger.action.LoadCase;
import spanledger.action.LoadOrigin;
import spanledger.action.NodalLoad;
import spanledger.action.SegmentLoad;
import spanledger.analysis.SegmentModel;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.Node;
import spanledger.frame.Segment;
import spanledger.frame.Vector;
import spanledger.stability.ModeShape;

/**
 * Loads that stand for frames out of plumb and members out of straight, made for each state from
 * its own loads, so that no state goes without: area, moving, guardrail and wind states alike.
 */
public final class Imperfections {

  /** Beginning of {@link NodalLoad#what()} where planned level forces act on nodes. */
  private static final String PLANNED = "notional sway";

  private static final Vector X = new Vector(1, 0, 0);
  private static final Vector Y = new Vector(0, 1, 0);

  private Imperfections() {}

  /** Whether level forces for a frame out of plumb are among the loads already. */
  public static boolean hasSway(LoadState state) {
    return state.parts().stream()
        .anyMatch(
            part ->
                part.loads().segmentLoads().stream()
                        .anyMatch(load -> load.origin() instanceof LoadOrigin.Notional)
                    || part.loads().nodalLoads().stream()
                        .anyMatch(load -> load.what().startsWith(PLANNED)));
  }

  /**
   * A state with the frame out of plumb along X and along Y, each way: four states; the state alone
   * if it has such forces already.
   *
   * @param fraction level force per downward force, for example 1/200
   */
  public static List<LoadState> everyWay(LoadState state, double fraction) {
    if (hasSway(state)) {
      return List.of(state);
    }
    List<LoadState> ways = new ArrayList<>();
    for (Vector axis : List.of(X, Y)) {
      for (int sign : new int[] {1, -1}) {
        ways.add(swayed(state, axis.times(sign), fraction));
      }
    }
    return List.copyOf(ways);
  }

  /**
   * A state with the frame out of plumb along and against the level movement of a buckling mode;
   * the state alone if it has such forces already, or if the mode does not move level.
   */
  public static List<LoadState> alongMode(
      LoadState state, Frame frame, ModeShape mode, double fraction) {
    Vector way = levelWay(frame, mode);
    if (hasSway(state) || way.norm() == 0) {
      return List.of(state);
    }
    return List.of(swayed(state, way, fraction), swayed(state, way.times(-1), fraction));
  }

  /** The level direction, of length 1, in which most of a mode goes; zero if it does not. */
  public static Vector levelWay(Frame frame, ModeShape mode) {
    double[] movements = mode.movements();
    double xx = 0;
    double yy = 0;
    double xy = 0;
    for (int n = 0; n < frame.nodes().size(); n++) {
      double x = movements[6 * n];
      double y = movements[6 * n + 1];
      xx += x * x;
      yy += y * y;
      xy += x * y;
    }
    if (!(xx + yy > 1e-6)) {
      return Vector.ZERO;
    }
    // The principal direction of the level movements of all nodes.
    double angle = 0.5 * Math.atan2(2 * xy, xx - yy);
    return new Vector(Math.cos(angle), Math.sin(angle), 0);
  }

  /**
   * A state with level forces for a frame out of plumb.
   *
   * @param level their direction, of length 1, global
   * @param fraction level force per downward force
   */
  public static LoadState swayed(LoadState state, Vector level, double fraction) {
    List<LoadState.Part> parts = new ArrayList<>(state.parts());
    for (LoadState.Part part : state.parts()) {
      LoadCase sway = sway(part.loads(), level, fraction);
      if (!sway.segmentLoads().isEmpty() || !sway.nodalLoads().isEmpty()) {
        parts.add(new LoadState.Part(sway, part.factor()));
      }
    }
    return new LoadState(state.name() + ", sway " + words(level), parts);
  }

  private static String words(Vector level) {
    if (Math.abs(level.y()) < 1e-9) {
      return level.x() > 0 ? "+X" : "-X";
    }
    if (Math.abs(level.x()) < 1e-9) {
      return level.y() > 0 ? "+Y" : "-Y";
    }
    long degrees = Math.round(Math.toDegrees(Math.atan2(level.y(), level.x())));
    return "at " + degrees + " degrees from X";
  }

  /** Level forces in proportion to what weighs down in a case. */
  private static LoadCase sway(LoadCase loads, Vector level, double fraction) {
    List<SegmentLoad> segmentLoads = new ArrayList<>();
    for (SegmentLoad load : loads.segmentLoads()) {
      double share = -vertical(load) * fraction;
      if (share != 0) {
        segmentLoads.add(load.turned(level, share));
      }
    }
    List<NodalLoad> nodalLoads = new ArrayList<>();
    for (NodalLoad load : loads.nodalLoads()) {
      if (load.force().z() != 0) {
        nodalLoads.add(
            new NodalLoad(
                load.node(),
                level.times(-load.force().z() * fraction),
                Vector.ZERO,
                PLANNED + " of " + load.what()));
      }
    }
    return new LoadCase("sway of " + loads.name(), nodalLoads, segmentLoads);
  }

  /** The share of a load that acts upward, also if it is given in the segment's axes. */
  private static double vertical(SegmentLoad load) {
    Vector direction = load.direction();
    if (load.axes() == LoadAxes.GLOBAL) {
      return direction.z();
    }
    SegmentModel model = new SegmentModel(load.segment());
    return model.axisX().z() * direction.x()
        + model.axisY().z() * direction.y()
        + model.axisZ().z() * direction.z();
  }

  /**
   * Loads that stand for compressed members out of straight: 8 N e/L² along each, with the forces
   * at its ends that keep the whole free of load.
   *
   * @param solved a solution of the state, for the axial forces
   * @param bow e/L of each member; 0 where it is straight
   * @param aboutY whether members bow in their x-z plane, else in their x-y plane
   * @param sign 1 or -1: towards the positive or the negative local axis
   */
  public static LoadCase bows(
      StateResult solved, Frame frame, ToDoubleFunction<Member> bow, boolean aboutY, int sign) {
    List<SegmentLoad> segmentLoads = new ArrayList<>();
    List<NodalLoad> nodalLoads = new ArrayList<>();
    for (Member member : frame.members()) {
      double compression = 0;
      double length = 0;
      for (Segment segment : frame.segmentsOf(member)) {
        compression = Math.max(compression, -solved.axialForce(segment));
        length += segment.length();
      }
      double intensity = 8 * compression * bow.applyAsDouble(member) / length;
      if (intensity > 0) {
        add(frame, member, aboutY, sign * intensity, segmentLoads, nodalLoads);
      }
    }
    String way = (sign > 0 ? "+" : "-") + (aboutY ? "z" : "y");
    return new LoadCase("bow " + way, nodalLoads, segmentLoads);
  }

  private static void add(
      Frame frame,
      Member member,
      boolean aboutY,
      double intensity,
      List<SegmentLoad> segmentLoads,
      List<NodalLoad> nodalLoads) {
    Vector direction = aboutY ? new Vector(0, 0, 1) : new Vector(0, 1, 0);
    LoadOrigin origin = new LoadOrigin.Given("bow of member " + member.name());
    double length = 0;
    SegmentModel model = new SegmentModel(frame.segmentsOf(member).get(0));
    for (Segment segment : frame.segmentsOf(member)) {
      length += segment.length();
      segmentLoads.add(
          new SegmentLoad.Distributed(
              segment,
              LoadAxes.LOCAL,
              direction,
              origin,
              intensity,
              intensity,
              0,
              segment.length()));
    }
    Vector across = aboutY ? model.axisZ() : model.axisY();
    Vector end = across.times(-0.5 * intensity * length);
    List<Node> along = member.nodes();
    for (Node node : List.of(along.get(0), along.get(along.size() - 1))) {
      nodalLoads.add(new NodalLoad(node, end, Vector.ZERO, "bow of member " + member.name()));
    }
  }
}
