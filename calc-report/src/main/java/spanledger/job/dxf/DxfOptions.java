package spanledger.job.dxf;

import java.util.OptionalDouble;
import java.util.Set;

/**
 * How a drawing is to be read.
 *
 * @param unit what a length of 1 in the drawing means, mm; empty to take it from the drawing
 * @param layers the layers that count; all if empty
 * @param joinWithin ends of lines and arcs no farther apart are joined, mm
 */
public record DxfOptions(OptionalDouble unit, Set<String> layers, double joinWithin) {

  /** How far ends may lie apart if nobody says otherwise, mm: drawings round to hundredths. */
  public static final double USUAL_JOIN = 0.01;

  /** The unit of the drawing, all layers, the usual distance. */
  public static final DxfOptions USUAL =
      new DxfOptions(OptionalDouble.empty(), Set.of(), USUAL_JOIN);

  public DxfOptions {
    layers = Set.copyOf(layers);
    if (!(joinWithin > 0) || !(unit.orElse(1) > 0)) {
      throw new IllegalArgumentException(
          "Ends are joined within "
              + joinWithin
              + " mm and a length of 1 means "
              + unit.orElse(1)
              + " mm; both must be more than 0.");
    }
  }
}
