package spanledger.material;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import spanledger.provenance.Source;

/**
 * An alloy and temper with its characteristic strengths for some forms and thicknesses.
 *
 * @param designation alloy, temper and, where tables differ, the standard, for example {@code
 *     6063-T6}
 * @param forms the product forms it holds for, at least one
 * @param thickness the wall thicknesses it holds for
 * @param proofStrength 0.2 % proof strength f_o, MPa
 * @param ultimateStrength ultimate tensile strength f_u, MPa
 * @param bucklingClass how it loses strength to local buckling
 * @param heatAffected strengths beside welds, if known
 * @param elongation least elongation at fracture as a ratio, if known
 * @param youngsModulus E, MPa
 * @param shearModulus G, MPa
 * @param density kg/mm³
 * @param source where the strengths come from
 * @param note anything a reader should know, may be empty
 */
public record Alloy(
    String designation,
    Set<ProductForm> forms,
    ThicknessRange thickness,
    double proofStrength,
    double ultimateStrength,
    BucklingClass bucklingClass,
    Optional<HeatAffectedStrengths> heatAffected,
    OptionalDouble elongation,
    double youngsModulus,
    double shearModulus,
    double density,
    Source source,
    String note) {

  /**
   * @throws IllegalArgumentException if there is no form, a strength, modulus or density is not
   *     positive, or the ultimate strength is below the proof strength
   */
  public Alloy {
    if (forms.isEmpty()) {
      throw new IllegalArgumentException("Alloy " + designation + " has no product form.");
    }
    forms = Collections.unmodifiableSet(EnumSet.copyOf(forms));
    requirePositive(designation, "proof strength", proofStrength, "MPa");
    requirePositive(designation, "ultimate strength", ultimateStrength, "MPa");
    requirePositive(designation, "Young's modulus", youngsModulus, "MPa");
    requirePositive(designation, "shear modulus", shearModulus, "MPa");
    requirePositive(designation, "density", density, "kg/mm³");
    if (ultimateStrength < proofStrength) {
      throw new IllegalArgumentException(
          "Alloy "
              + designation
              + " has an ultimate strength of "
              + ultimateStrength
              + " MPa, below its proof strength of "
              + proofStrength
              + " MPa.");
    }
  }

  private static void requirePositive(String alloy, String what, double value, String unit) {
    if (!(value > 0 && Double.isFinite(value))) {
      throw new IllegalArgumentException(
          "Alloy "
              + alloy
              + ": the "
              + what
              + " is "
              + value
              + " "
              + unit
              + ", but must be positive.");
    }
  }
}
