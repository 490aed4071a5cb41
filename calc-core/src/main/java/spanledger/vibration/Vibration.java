package spanledger.vibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.frame.DividedFrame;
import spanledger.frame.Frame;
import spanledger.stability.FrameStiffness;
import spanledger.stability.ModeNaming;

/**
 * The lowest natural frequencies of a frame, proved to be the lowest by a count of eigenvalues.
 * One-way holds bear and play is taken up: small vibrations about a loaded frame. Axial forces do
 * not soften it.
 */
public final class Vibration {

  /**
   * A mode whose energy is in floors moving up and down by this share is a vibration of a floor.
   */
  public static final double FLOOR_MODE = 0.5;

  /**
   * A mode that moves this share of the whole mass one way sideways is one of the whole platform.
   */
  public static final double SWAY_MODE = 0.5;

  /** Eigenvalues that differ by less than this share are one: the solver knows no better. */
  private static final double SAME = 1e-6;

  private final List<VibrationMode> modes;
  private final double proofBelow;
  private final DividedFrame divided;
  private final MassMatrix mass;

  private Vibration(
      List<VibrationMode> modes, double proofBelow, DividedFrame divided, MassMatrix mass) {
    this.modes = List.copyOf(modes);
    this.proofBelow = proofBelow;
    this.divided = divided;
    this.mass = mass;
  }

  /**
   * Works them out.
   *
   * @param frame the frame
   * @param masses what vibrates
   * @param count how many modes at least; fewer if the frame has fewer
   * @param pieces pieces per segment; the error of a frequency of a segment on simple bearings is
   *     about (π/pieces)⁴/1440 of it: 0.03 % with 4
   * @throws spanledger.analysis.MechanismException if the frame can move without resistance
   * @throws IllegalArgumentException if there is no mass
   */
  public static Vibration of(Frame frame, Masses masses, int count, int pieces) {
    DividedFrame divided = DividedFrame.of(frame, pieces);
    FrameStiffness stiffness = new FrameStiffness(divided.frame());
    MassMatrix mass = new MassMatrix(stiffness, divided, frame, masses);
    LowestModes.Found found = new LowestModes(stiffness, mass.matrix()).find(count);
    ModeNaming naming = new ModeNaming(stiffness);
    List<VibrationMode> modes = new ArrayList<>();
    for (int i = 0; i < found.values().length; i++) {
      modes.add(VibrationMode.of(found.values()[i], naming.named(found.vectors()[i]), mass));
    }
    return new Vibration(modes, ModeFigures.frequency(found.provedBelow()), divided, mass);
  }

  /** The modes, lowest first. */
  public List<VibrationMode> modes() {
    return modes;
  }

  /** Below this frequency there are no modes but those found, Hz; proved by a count. */
  public double provedBelow() {
    return proofBelow;
  }

  /** The mass that vibrates, kg. */
  public double mass() {
    return mass.total();
  }

  /** The frame by whose nodes the modes are given. */
  public DividedFrame divided() {
    return divided;
  }

  /** What the masses come from, each greater than 0. */
  public List<LoadMass> loads() {
    return List.copyOf(mass.loads());
  }

  /** The lowest mode in which floors move up and down, if it is among those found. */
  public Optional<VibrationMode> firstOfFloors() {
    return modes.stream().filter(this::isOfFloors).findFirst();
  }

  /** Whether floors moving up and down have enough of a mode's energy. */
  public boolean isOfFloors(VibrationMode mode) {
    return mode.floorShare() >= FLOOR_MODE;
  }

  /**
   * Whether a mode moves enough of the whole mass one way, whichever way that is: the shares along
   * X and Y add up to the one along the best level direction. Any mixture of modes of one frequency
   * is a mode, so theirs count together: a square platform sways along X as fast as along Y, and
   * the solver may find it swaying along both diagonals.
   */
  public boolean isSideways(VibrationMode mode) {
    return modes.stream()
            .filter(m -> Math.abs(m.eigenvalue() - mode.eigenvalue()) <= SAME * mode.eigenvalue())
            .mapToDouble(m -> m.shareX() + m.shareY())
            .sum()
        >= SWAY_MODE;
  }

  /** The lowest mode in which the whole platform moves sideways, if it is among those found. */
  public Optional<VibrationMode> firstSideways() {
    return modes.stream().filter(this::isSideways).findFirst();
  }
}
