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

  /** Greatest end or edge distance: times the thickness. */
  public static final String END_MOST_THICKNESS = "joint.end.most.thickness";

  /** Greatest end or edge distance: length added. */
  public static final String END_MOST_LENGTH = "joint.end.most.length";

  /** Greatest distance of holes per thickness. */
  public static final String PITCH_MOST_THICKNESS = "joint.pitch.most.thickness";

  /** Greatest distance of holes. */
  public static final String PITCH_MOST_LENGTH = "joint.pitch.most.length";

  /** Part of the net section's tensile strength that counts. */
  public static final String NET = "tension.net";

  /** The other codes: shear per tensile strength of a bolt. */
  public static final String SHEAR = "joint.shear";

  /** The other codes: greatest bearing, times diameter, thickness and ultimate strength. */
  public static final String BEARING_MOST = "joint.bearing.most";

  private JointFigures() {}

  /**
   * A resistance factor, {@code phi.} and a word.
   *
   * @param what for example {@code bolt}
   */
  static Figured phi(CodeFigures figures, String what) {
    return figures.figured("phi." + what);
  }

  /** A safety factor; 1 in a code that has none. */
  static Figured omega(CodeFigures figures, String what) {
    String id = "omega." + what;
    return figures.figures().containsKey(id)
        ? figures.figured(id)
        : new Figured(1, "no safety factor", figures.figure("phi." + what).source());
  }

  /** The figure for planes through the thread of a grade, or else for all grades. */
  static Figured thread(CodeFigures figures, Bolt bolt) {
    String own = SHEAR_THREAD + "." + bolt.grade().name();
    return figures.figured(figures.figures().containsKey(own) ? own : SHEAR_THREAD);
  }
}
