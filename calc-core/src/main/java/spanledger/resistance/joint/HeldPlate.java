package spanledger.resistance.joint;

import java.util.OptionalDouble;
import spanledger.provenance.Source;

/**
 * A plate under the head or nut of a bolt in tension.
 *
 * @param name of the place
 * @param metal of the plate
 * @param thickness mm
 * @param washer diameter of a washer stiff enough to spread the force; empty if the head or nut
 *     itself counts, mm
 * @param source where this is given
 */
public record HeldPlate(
    String name, Metal metal, double thickness, OptionalDouble washer, Source source) {

  /**
   * @throws IllegalArgumentException if a size is not positive
   */
  public HeldPlate {
    if (!(thickness > 0) || !(washer.orElse(1) > 0)) {
      throw new IllegalArgumentException(name + ": thickness and washer must be above 0.");
    }
  }
}
