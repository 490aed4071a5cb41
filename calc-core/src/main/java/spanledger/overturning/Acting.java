package spanledger.overturning;

/** A load as it acts on the structure as a whole. */
public sealed interface Acting permits FloorWeight, LineWeight, PlacedForce {

  /** What acts, and where, in words. */
  String name();

  /**
   * The moment of that part of it which makes tipping worse, N·mm, zero or more.
   *
   * @param sway notional level force per weight, which acts with loads on floors
   */
  double tipping(TippingEdge edge, double sway);
}
