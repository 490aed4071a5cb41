package spanledger.job;

import java.util.Optional;
import spanledger.material.Alloy;
import spanledger.material.ProductForm;

/** A material of a job before a section decides which row of the alloy table holds. */
sealed interface MaterialChoice {

  /**
   * A published alloy.
   *
   * @param designation alloy and temper
   * @param form the product form, if the job states it; else the section's shape decides
   */
  record Published(String designation, Optional<ProductForm> form) implements MaterialChoice {}

  /**
   * An alloy whose strengths the job gives itself.
   *
   * @param alloy the alloy
   */
  record Own(Alloy alloy) implements MaterialChoice {}
}
