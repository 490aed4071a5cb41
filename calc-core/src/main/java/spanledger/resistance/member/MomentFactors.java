package spanledger.resistance.member;

import spanledger.provenance.Source;

/**
 * What the elastic critical moment has to know of moment diagram, load and end restraints.
 *
 * @param c1 factor for the shape of the moment diagram; 1 for uniform moment
 * @param c2 factor of the load's height
 * @param c3 factor of the section's asymmetry
 * @param kz length factor of bending about the minor axis at the restraints: 1 free, ½ held
 * @param kw length factor of warping at the restraints: 1 free, ½ held
 * @param loadHeight z_g: from the shear centre to where the load acts, mm; positive where the load
 *     acts towards the shear centre and so makes things worse
 * @param cb C_b of the Aluminum Design Manual and AS/NZS 1664.1 where it is declared; 0 to have it
 *     worked out from the moments of {@link Effect}
 * @param reason why these
 * @param source where they come from
 */
public record MomentFactors(
    double c1,
    double c2,
    double c3,
    double kz,
    double kw,
    double loadHeight,
    double cb,
    String reason,
    Source source) {

  /**
   * @throws IllegalArgumentException if a factor that divides is not positive
   */
  public MomentFactors {
    if (!(c1 > 0) || !(kz > 0) || !(kw > 0) || cb < 0) {
      throw new IllegalArgumentException(
          "C1 = "
              + c1
              + ", k_z = "
              + kz
              + ", k_w = "
              + kw
              + " must be positive, C_b = "
              + cb
              + " at least 0.");
    }
  }

  /**
   * Uniform moment, loads at the shear centre, ends free to warp. On the safe side, except where
   * loads act above the shear centre.
   */
  public static MomentFactors uniform() {
    return new MomentFactors(
        1,
        0,
        1,
        1,
        1,
        0,
        1,
        "uniform moment, no load above the shear centre",
        Source.derived("Uniform moment is the worst diagram for loads at the shear centre"));
  }
}
