/** Tipping and sliding of whole structures, against statics by hand. */
@NullMarked
package spanledger.verification.standing;

import org.jspecify.annotations.NullMarked;
