package spanledger.resistance.joint;

import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.Figured;

/** The ids of the figures of joints that codes leave to data. */
public final class JointFigures {

  /** EN 1999-1-1: γ_M1, yielding. */
  public static final String YIELDING = "gamma.M1";

  /** EN 1999-1-1: γ_M2, rupture of bolts and of plates at holes. */
  public static final String RUPTURE = "gamma.M2";

  /** EN 1999-1-1: γ_M3, slip under factored loads. */
  public static final String SLIP_ULTIMATE = "gamma.M3";

  /** EN 1999-1-1: γ_M3,ser, slip under loads of use. */
  public static final String SLIP_SERVICE = "gamma.M3.service";

  /** Part of the bolt's tensile strength that a plane through the shank bears in shear. */
  public static final String SHEAR_SHANK = "joint.shear.shank";

  /** The same of a plane through the thread, for grades that have no row of their own. */
  public static final String SHEAR_THREAD = "joint.shear.thread";

  /** Part of the tensile strength that a bolt bears in tension. */
  public static final String TENSION = "joint.tension";

  /** The same with a countersunk head. */
  public static final String TENSION_COUNTERSUNK = "joint.tension.countersunk";

  /** Factor on bearing in oversize holes. */
  public static final String OVERSIZE = "joint.hole.oversize";

  /** Factor on bearing in holes slotted across the force. */
  public static final String SLOTTED = "joint.hole.slotted-across";

  /** Least end distance per hole. */
  public static final String END_LEAST = "joint.end.least";

  /** Least edge distance per hole. */
  public static final String EDGE_LEAST = "joint.edge.least";

  /** Least distance of holes along the force, per hole. */
  public static final String PITCH_LEAST = "joint.pitch.least";

  /** Least distance of holes across the force, per hole. */
  public static final String GAUGE_LEAST = "joint.gauge.least";

  private JointFigures() {}

  /** The figure for planes through the thread of a grade, or else for all grades. */
  static Figured thread(CodeFigures figures, Bolt bolt) {
    String own = SHEAR_THREAD + "." + bolt.grade().name();
    return figures.figured(figures.figures().containsKey(own) ? own : SHEAR_THREAD);
  }
}
