package spanledger.joint;

/** What a bolt bears with on the side of its head. */
public sealed interface BoltHead {

  /** Its name in words. */
  String words();

  /** A hexagon head of the size that the bolt table gives, with a nut on the other side. */
  record Hexagon() implements BoltHead {
    @Override
    public String words() {
      return "hexagon head";
    }
  }

  /**
   * A head, or a nut, that lies in a slot and bears on its lips.
   *
   * @param shape what it is called, for example {@code hammer head}
   * @param length along the slot, on which it bears, mm
   * @param width across the slot, mm
   * @param height of the head, mm
   */
  record InSlot(String shape, double length, double width, double height) implements BoltHead {

    /**
     * @throws IllegalArgumentException if a size is not above zero
     */
    public InSlot {
      if (!(length > 0) || !(width > 0) || !(height > 0)) {
        throw new IllegalArgumentException("A bolt head needs sizes above zero.");
      }
    }

    @Override
    public String words() {
      return shape;
    }
  }
}
