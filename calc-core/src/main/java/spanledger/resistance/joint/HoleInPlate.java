package spanledger.resistance.joint;

import java.util.OptionalDouble;
import java.util.stream.Stream;
import spanledger.provenance.Source;

/**
 * A hole that a bolt presses on, with the metal around it.
 *
 * @param name of the place, for example {@code bracket B1, hole 2}
 * @param metal of the plate
 * @param thickness of the plate less any countersink that does not bear, mm
 * @param hole its diameter d_0, mm
 * @param shape of the hole
 * @param end distance e_1 to the end that the bolt presses towards; empty if none is near, mm
 * @param pitch distance p_1 to the next hole along the force; empty if there is none, mm
 * @param edge distance e_2 to the edge at the side; empty if none is near, mm
 * @param gauge distance p_2 to the next hole across the force; empty if there is none, mm
 * @param source where this is given
 */
public record HoleInPlate(
    String name,
    Metal metal,
    double thickness,
    double hole,
    Shape shape,
    OptionalDouble end,
    OptionalDouble pitch,
    OptionalDouble edge,
    OptionalDouble gauge,
    Source source) {

  /** Shapes of holes. */
  public enum Shape {
    /** Round, with the usual clearance. */
    NORMAL,
    /** Round, wider than usual. */
    OVERSIZE,
    /** Longer across the force than along it. */
    SLOTTED_ACROSS
  }

  /**
   * @throws IllegalArgumentException if a size is not positive, an edge cuts the hole, or holes
   *     overlap
   */
  public HoleInPlate {
    boolean sound = thickness > 0 && hole > 0;
    sound &= Stream.of(end, edge).allMatch(e -> e.isEmpty() || e.getAsDouble() > hole / 2);
    sound &= Stream.of(pitch, gauge).allMatch(p -> p.isEmpty() || p.getAsDouble() > hole);
    if (!sound) {
      throw new IllegalArgumentException(
          name
              + ": thickness and hole must be above 0, ends and edges further than half of the hole,"
              + " the next holes further than a hole; found a plate of "
              + thickness
              + " mm, a hole of "
              + hole
              + " mm, e1 "
              + words(end)
              + ", p1 "
              + words(pitch)
              + ", e2 "
              + words(edge)
              + ", p2 "
              + words(gauge)
              + ".");
    }
  }

  private static String words(OptionalDouble distance) {
    return distance.isPresent() ? distance.getAsDouble() + " mm" : "none";
  }
}
