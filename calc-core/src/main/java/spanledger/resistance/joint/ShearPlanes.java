package spanledger.resistance.joint;

import spanledger.provenance.Source;

/**
 * How a bolt is sheared.
 *
 * @param name of the place, for example {@code bracket B1, bolt 2}
 * @param planes how many planes share the force, 1 or more
 * @param threadInPlane whether thread lies in a plane
 * @param packing total thickness of packing, 0 if none, mm
 * @param length of the joint from the first to the last bolt along the force, 0 if one bolt, mm
 * @param source where this is given
 */
public record ShearPlanes(
    String name, int planes, boolean threadInPlane, double packing, double length, Source source) {

  /**
   * @throws IllegalArgumentException if there is no plane, or a length is negative
   */
  public ShearPlanes {
    if (planes < 1 || !(packing >= 0) || !(length >= 0)) {
      throw new IllegalArgumentException(
          name
              + ": a bolt is sheared in 1 plane or more, with packing and joint length of 0 or more;"
              + " found "
              + planes
              + ", "
              + packing
              + " mm, "
              + length
              + " mm.");
    }
  }

  /** One plane through the thread, no packing, one bolt in line. */
  public static ShearPlanes single(String name, Source source) {
    return new ShearPlanes(name, 1, true, 0, 0, source);
  }
}
