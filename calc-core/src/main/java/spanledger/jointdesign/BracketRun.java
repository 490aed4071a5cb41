package spanledger.jointdesign;

import java.util.List;
import spanledger.joint.JointAxis;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;

/**
 * One of several brackets of a joint under one set of forces.
 *
 * @param name of the bracket
 * @param share a run of {@link BracketShare}
 * @param moves a run of {@link FaceMoves} for each of its faces; the last has the movement of the
 *     member end
 * @param end which step of the last of them is the shift along u, v, w and the turn about u, v, w
 */
public record BracketRun(String name, Working share, List<Working> moves, List<String> end) {

  public BracketRun {
    moves = List.copyOf(moves);
    end = List.copyOf(end);
  }

  private Working last() {
    return moves.get(moves.size() - 1);
  }

  /** The shift of the member end along an axis of the joint, mm, as this bracket gives way. */
  public Feed.Result shift(JointAxis axis) {
    return new Feed.Result(last(), end.get(axis.ordinal()));
  }

  /** The turn of the member end about an axis of the joint, as this bracket gives way. */
  public Feed.Result turn(JointAxis axis) {
    return new Feed.Result(last(), end.get(3 + axis.ordinal()));
  }
}
