package spanledger.stability;

/** One factor at which a frame buckles, and what each segment does there. Immutable. */
public final class FrameMode {

  private final int number;
  private final double factor;
  private final String words;
  private final double[][] energies;
  private final double[][] works;

  FrameMode(int number, double factor, String words, double[][] energies, double[][] works) {
    this.number = number;
    this.factor = factor;
    this.words = words;
    this.energies = energies;
    this.works = works;
  }

  /** Which factor it is, from 1; with equal ones counted, the last of them. */
  public int number() {
    return number;
  }

  /** On all axial forces. */
  public double factor() {
    return factor;
  }

  /** How the frame moves. */
  public String words() {
    return words;
  }

  /**
   * Twice the energy of bending of a segment, to a scale that is the mode's own.
   *
   * @param axis 0 for bending about y, 1 about z
   */
  public double energy(int segment, int axis) {
    return energies[segment][axis];
  }

  /** What the axial force does to the same scale, positive where compression drives the mode. */
  public double work(int segment, int axis) {
    return works[segment][axis];
  }
}
