package spanledger.memberdesign;

/** On what a buckling length rests. */
public sealed interface LengthBasis {

  /**
   * A length given by the engineer.
   *
   * @param length mm
   */
  record Declared(double length) implements LengthBasis {}

  /**
   * A multiple of the member's length between its end nodes.
   *
   * @param factor of the length
   */
  record OfMember(double factor) implements LengthBasis {}

  /**
   * A multiple of the greatest distance between neighbouring nodes of the member, where what joins
   * there holds it.
   *
   * @param factor of the distance
   */
  record BetweenNodes(double factor) implements LengthBasis {}

  /** From the elastic critical load of the frame, in the mode in which the member takes part. */
  record FrameBuckling() implements LengthBasis {}
}
