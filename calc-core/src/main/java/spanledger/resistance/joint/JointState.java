package spanledger.resistance.joint;

/** For which limit state a slip is judged. */
public enum JointState {
  /** No slip under loads of use. */
  SERVICE,
  /** No slip under factored loads. */
  ULTIMATE
}
