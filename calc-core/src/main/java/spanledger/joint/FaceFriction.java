package spanledger.joint;

import spanledger.provenance.Source;

/**
 * Friction between the plies of a face.
 *
 * @param lower least coefficient
 * @param source the test or the declaration; friction of anodised or coated faces is never
 *     published for a product
 */
public record FaceFriction(double lower, Source source) {

  /**
   * @throws IllegalArgumentException if the coefficient is not above zero
   */
  public FaceFriction {
    if (!(lower > 0)) {
      throw new IllegalArgumentException("Friction needs a coefficient above zero.");
    }
  }
}
