package spanledger.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import spanledger.frame.Frame;
import spanledger.frame.MemberEnd;
import spanledger.frame.Restraint;
import spanledger.frame.Segment;

/**
 * The member ends that turn freely against their nodes when a frame moves without resistance.
 *
 * @param joints those that turn most first
 */
record FreeJoints(List<Joint> joints) {

  /** Joints that turn less than this share of the one that turns most only follow. */
  private static final double ALONG = 0.1;

  /** Joints told by name; of others only how many there are. */
  private static final int MOST = 4;

  /**
   * A joint that turns.
   *
   * @param words the member end and its axis
   * @param turn rad
   */
  record Joint(String words, double turn) {}

  /**
   * Finds them. Nothing is strained, so bars stay straight, and a free end turns against its node
   * by as much as the node turns from the chord.
   *
   * @param movement six per node, not modified
   */
  static FreeJoints of(List<SegmentModel> models, Frame frame, double[] movement) {
    List<Joint> all = new ArrayList<>();
    double[] own = new double[SegmentModel.ENDS];
    double[] turns = new double[SegmentModel.DEFORMATIONS];
    for (SegmentModel model : models) {
      Segment segment = model.segment();
      SegmentModel.gather(
          movement, frame.indexOf(segment.first()), frame.indexOf(segment.second()), own);
      model.deformations(own, turns);
      add(segment, segment.start(), "start", turns, 0, all);
      add(segment, segment.end(), "end", turns, 1, all);
    }
    double most = all.stream().mapToDouble(Joint::turn).max().orElse(0);
    return new FreeJoints(
        all.stream()
            .filter(joint -> joint.turn() > ALONG * most)
            .sorted(Comparator.comparingDouble(Joint::turn).reversed())
            .toList());
  }

  private static void add(
      Segment segment, MemberEnd end, String which, double[] turns, int at, List<Joint> all) {
    Restraint[] holds = {end.torsion(), end.aboutY(), end.aboutZ()};
    double[] turn = {turns[1], turns[2 + at], turns[4 + at]};
    for (int axis = 0; axis < holds.length; axis++) {
      if (holds[axis] instanceof Restraint.Free) {
        all.add(
            new Joint(
                "the "
                    + which
                    + " of "
                    + segment.member().name()
                    + " about its "
                    + "xyz".charAt(axis)
                    + " axis",
                Math.abs(turn[axis])));
      }
    }
  }

  /** A sentence to be put behind another; empty if no free joint turns. */
  String words() {
    if (joints.isEmpty()) {
      return "";
    }
    int others = joints.size() - MOST;
    return joints.stream()
        .limit(MOST)
        .map(Joint::words)
        .collect(
            Collectors.joining(
                ", ",
                " Free to turn as it does so: ",
                others > 0 ? ", and " + others + " other member ends." : "."));
  }
}
