package spanledger.frame;

/**
 * How a member end is joined to its node.
 *
 * @param torsion the joint's hold against turning about the member's x axis
 * @param aboutY the joint's hold against turning about the member's y axis (bending in its x-z
 *     plane)
 * @param aboutZ the joint's hold against turning about the member's z axis (bending in its x-y
 *     plane)
 * @param offset rigid arm from the node to the member end, global axes, mm
 */
public record MemberEnd(Restraint torsion, Restraint aboutY, Restraint aboutZ, Vector offset) {

  /** Joined rigidly, without an offset. */
  public static final MemberEnd RIGID =
      new MemberEnd(Restraint.FIXED, Restraint.FIXED, Restraint.FIXED, Vector.ZERO);

  /** Free to bend about both axes, held in torsion, without an offset. */
  public static final MemberEnd PINNED =
      new MemberEnd(Restraint.FIXED, Restraint.FREE, Restraint.FREE, Vector.ZERO);
}
