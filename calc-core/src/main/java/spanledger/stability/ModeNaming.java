package spanledger.stability;

import spanledger.frame.Frame;
import spanledger.frame.Freedom;
import spanledger.frame.Node;

/** Scales a movement of the whole frame and says in words what moves. */
public final class ModeNaming {

  private static final int SIX = 6;

  /**
   * A turn counts with half the longest segment at its node as its arm: less than the shift it goes
   * with when something swings, so that the shift is named.
   */
  private static final double ARM = 0.5;

  /** From this share of all squared shifts on, a movement is said to go one way. */
  private static final double MOSTLY = 0.7;

  /** Nodes that move less than this share of the greatest do not move along. */
  private static final double ALONG = 0.3;

  private final FrameStiffness stiffness;

  /** For movements of one frame. */
  public ModeNaming(FrameStiffness stiffness) {
    this.stiffness = stiffness;
  }

  /** Names a movement. */
  public ModeShape named(double[] movement) {
    double[] scaled = movement.clone();
    int at = greatest(scaled);
    double size = size(at, scaled[at]);
    if (size > 0) {
      double scale = Math.signum(scaled[at]) / size;
      for (int i = 0; i < scaled.length; i++) {
        scaled[i] = scaled[i] * scale + 0.0;
      }
    }
    return new ModeShape(scaled, words(scaled, at));
  }

  /** The freedom that moves most; the first in the frame's order among those that move alike. */
  public int greatest(double[] movement) {
    double most = 0;
    for (int i = 0; i < movement.length; i++) {
      most = Math.max(most, size(i, movement[i]));
    }
    for (int i = 0; i < movement.length; i++) {
      if (size(i, movement[i]) > (1 - 1e-3) * most) {
        return i;
      }
    }
    return 0;
  }

  private double size(int freedom, double movement) {
    double arm = freedom % SIX < 3 ? 1 : ARM * stiffness.longest(freedom / SIX);
    return Math.abs(movement) * arm;
  }

  private String words(double[] mode, int at) {
    Frame frame = stiffness.frame();
    Node node = frame.nodes().get(at / SIX);
    Freedom freedom = Freedom.values()[at % SIX];
    if (!freedom.isShift()) {
      return "node " + node.name() + " turns " + freedom.words() + " most";
    }
    double[] squares = new double[3];
    int along = 0;
    int signs = 0;
    for (int n = 0; n < frame.nodes().size(); n++) {
      for (int i = 0; i < 3; i++) {
        squares[i] += mode[SIX * n + i] * mode[SIX * n + i];
      }
      double same = mode[SIX * n + at % SIX];
      if (Math.abs(same) > ALONG) {
        along++;
        signs += same > 0 ? 1 : 0;
      }
    }
    boolean oneWay = squares[at % SIX] > MOSTLY * (squares[0] + squares[1] + squares[2]);
    String most = ", node " + node.name() + " most";
    if (oneWay && along > 1 && signs == along) {
      return along + " nodes move " + freedom.words() + " together" + most;
    }
    if (oneWay && along > 1) {
      return along + " nodes move " + freedom.words() + ", to both sides" + most;
    }
    return "node " + node.name() + " moves " + freedom.words() + " most";
  }
}
