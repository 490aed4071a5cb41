package spanledger.resistance.joint;

import spanledger.provenance.Source;
import spanledger.resistance.member.Working;

/**
 * The part of a bracket leg, or flange, that belongs to one bolt in tension: half of a T-stub. The
 * leg is held against turning at its root, as it is by its other half or by a stiff upright leg.
 *
 * @param name of the place
 * @param metal of the leg
 * @param thickness mm
 * @param toRoot m, from the bolt to the root, 0.8 of a fillet's radius deducted, mm
 * @param toEdge e, from the bolt to the edge behind it, mm
 * @param alongFirst along the root to the end of the leg, or half way to the next bolt, mm
 * @param alongSecond the same on the other side, mm
 * @param source where this is given
 */
public record TStub(
    String name,
    Metal metal,
    double thickness,
    double toRoot,
    double toEdge,
    double alongFirst,
    double alongSecond,
    Source source) {

  /**
   * @throws IllegalArgumentException if a size is not positive
   */
  public TStub {
    boolean sound = thickness > 0 && toRoot > 0 && toEdge > 0;
    sound &= alongFirst > 0 && alongSecond > 0;
    if (!sound) {
      throw new IllegalArgumentException(name + ": sizes of a leg at a bolt must be above 0.");
    }
  }

  /** Lengths of its yield lines: a run with steps n, l_1, l_2, and l_row of a row of two bolts. */
  public Working lengths() {
    return TStubLeg.lengths(this);
  }
}
