/** Where figures and formulas come from and how far they can be trusted. */
@NullMarked
package spanledger.provenance;

import org.jspecify.annotations.NullMarked;
