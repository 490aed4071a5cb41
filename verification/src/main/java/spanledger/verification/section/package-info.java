/**
 * Published and closed-form values for sections, and the comparison with what the program finds.
 */
@NullMarked
package spanledger.verification.section;

import org.jspecify.annotations.NullMarked;
