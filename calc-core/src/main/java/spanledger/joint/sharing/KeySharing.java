package spanledger.joint.sharing;

/** How keys and bolts divide the shears and the twist. */
public enum KeySharing {
  /** By their stiffnesses: bolts and keys move together. */
  BY_STIFFNESS,
  /**
   * The keys carry all shear across their slots and all twist; the bolts carry the shear along the
   * slots, if all slots are parallel, by their stiffnesses, and else none.
   */
  KEYS_CARRY_ACROSS
}
