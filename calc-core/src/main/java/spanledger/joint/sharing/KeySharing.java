package spanledger.joint.sharing;

/** How keys and bolts divide the shears and the torsion; the model is stated, not guessed. */
public enum KeySharing {
  /** By their stiffnesses: bolts and keys move together. */
  BY_STIFFNESS,
  /**
   * The keys carry all shear across their slots and all twist; the bolts carry the shear along the
   * slots, if all slots are parallel, by their stiffnesses, and else none.
   */
  KEYS_CARRY_ACROSS,
  /**
   * Before preloaded faces slip the parts do not move against each other: keys do not bear, and the
   * grip of every bolt holds alike in all directions, also along a slot. For slip in service; at
   * ultimate slip is taken to have happened.
   */
  BEFORE_SLIP
}
