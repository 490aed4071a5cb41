package spanledger.frame;

import java.util.List;

/**
 * How a member end is joined to its node.
 *
 * @param axial the joint's hold along the member's x axis; only one end of a member may have one
 *     that is not linear
 * @param torsion the joint's hold against turning about the member's x axis
 * @param aboutY the joint's hold against turning about the member's y axis (bending in its x-z
 *     plane)
 * @param aboutZ the joint's hold against turning about the member's z axis (bending in its x-y
 *     plane)
 * @param offset rigid arm from the node to the member end, global axes, mm
 */
public record MemberEnd(
    Restraint axial, Restraint torsion, Restraint aboutY, Restraint aboutZ, Vector offset) {

  public MemberEnd {
    if (!torsion.isLinear()) {
      throw new IllegalArgumentException(
          "A joint may have play or act one way along the member or in bending, not in torsion.");
    }
    if (axial instanceof Restraint.Free) {
      throw new IllegalArgumentException(
          "A joint must hold its member along its axis; let it act one way, or leave it out.");
    }
  }

  /** Held rigidly along the member's axis. */
  public MemberEnd(Restraint torsion, Restraint aboutY, Restraint aboutZ, Vector offset) {
    this(Restraint.FIXED, torsion, aboutY, aboutZ, offset);
  }

  /** Joined rigidly, without an offset. */
  public static final MemberEnd RIGID =
      new MemberEnd(Restraint.FIXED, Restraint.FIXED, Restraint.FIXED, Vector.ZERO);

  /** Free to bend about both axes, held in torsion, without an offset. */
  public static final MemberEnd PINNED =
      new MemberEnd(Restraint.FIXED, Restraint.FREE, Restraint.FREE, Vector.ZERO);

  /** The same with another hold along the member's axis. */
  public MemberEnd withAxial(Restraint other) {
    return new MemberEnd(other, torsion, aboutY, aboutZ, offset);
  }

  /** The same with its member end farther off, by a shift in global axes, mm. */
  public MemberEnd moved(Vector shift) {
    return new MemberEnd(axial, torsion, aboutY, aboutZ, offset.plus(shift));
  }

  /** The four holds in the order axial, torsion, about y, about z. */
  public List<Restraint> holds() {
    return List.of(axial, torsion, aboutY, aboutZ);
  }
}
