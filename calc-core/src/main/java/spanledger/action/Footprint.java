package spanledger.action;

/** The parts of a moving load and how they lie along its path. */
public sealed interface Footprint {

  /** From the first part to the last along the path, mm. */
  double reach();

  /** One force at one place. */
  record Point() implements Footprint {
    @Override
    public double reach() {
      return 0;
    }
  }

  /**
   * One force spread evenly over a length of the path.
   *
   * @param length mm, greater than 0
   */
  record Patch(double length) implements Footprint {
    public Patch {
      if (!(length > 0)) {
        throw new IllegalArgumentException("A patch has a length, found " + length + " mm.");
      }
    }

    @Override
    public double reach() {
      return length;
    }
  }

  /**
   * Equal forces in a row. Those beyond the ends of the path are not on the structure, so that a
   * train may stand on it in part.
   *
   * @param number how many forces, at least 1
   * @param spacing from one to the next along the path, mm
   */
  record Train(int number, double spacing) implements Footprint {
    public Train {
      if (number < 1 || !(spacing > 0)) {
        throw new IllegalArgumentException(
            "A train has forces at a spacing, found " + number + " at " + spacing + " mm.");
      }
    }

    @Override
    public double reach() {
      return (number - 1) * spacing;
    }
  }
}
