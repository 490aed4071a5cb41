package spanledger.verification.section;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * An outline with values that are known of it.
 *
 * @param id short and unique
 * @param says what the outline is
 * @param source where the values come from
 * @param given the outline and what else the values depend on
 * @param expected the values
 */
public record SectionCase(
    String id, String says, Origin source, Given given, List<Expected> expected) {

  /**
   * A source of values.
   *
   * @param work the work
   * @param place where in it
   * @param confidence published, derived or from memory
   */
  public record Origin(String work, String place, String confidence) {}

  /**
   * What the values are of.
   *
   * @param unit of lengths
   * @param poissonRatio for shear areas
   * @param target for finite elements, relative
   * @param rings outer ring, then holes; corners as y, z and, if an arc leaves the corner, its
   *     bulge
   */
  public record Given(
      String unit, double poissonRatio, double target, List<List<double[]>> rings) {}

  /**
   * One value.
   *
   * @param quantity its symbol, see {@link SectionQuantity}
   * @param value in the unit of lengths
   * @param tolerance how far the program may be off
   * @param absolute whether the tolerance is absolute, not relative
   * @param toleranceReason why not less
   * @param source if it is not that of the case
   */
  public record Expected(
      String quantity,
      double value,
      double tolerance,
      boolean absolute,
      String toleranceReason,
      @Nullable Origin source) {}
}
