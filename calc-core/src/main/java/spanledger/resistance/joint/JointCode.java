package spanledger.resistance.joint;

import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.Feed;

/**
 * The checks of joints by a standard. Implementations are immutable.
 *
 * <p>Forces are never negative; give sizes of forces. Each force is a {@link Feed}: a given number,
 * or a step of the run that worked it out.
 */
public interface JointCode {

  /** A short name, for example {@code en-1999-1-1}. */
  String id();

  /** The standard, as people cite it. */
  String title();

  /** Its figures, as they are used. */
  CodeFigures figures();

  /**
   * A bolt in shear.
   *
   * @param shear on the bolt, all its planes together, N
   */
  JointCheck boltShear(Bolt bolt, ShearPlanes planes, Feed shear);

  /**
   * A bolt in tension.
   *
   * @param name of the place
   * @param tension prying included, preload not, N
   */
  JointCheck boltTension(Bolt bolt, String name, Feed tension);

  /**
   * A bolt in shear and tension together.
   *
   * @param shear from {@link #boltShear} of the same bolt
   * @param tension from {@link #boltTension} of the same bolt
   */
  JointCheck boltShearAndTension(JointCheck shear, JointCheck tension);

  /**
   * A bolt on the wall of a hole, tear-out included.
   *
   * @param force of the bolt on this plate, N
   */
  JointCheck bearing(Bolt bolt, HoleInPlate hole, Feed force);
}
