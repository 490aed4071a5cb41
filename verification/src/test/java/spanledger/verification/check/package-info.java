/** Published values of whole checks: from the rule to the verdict. */
@NullMarked
package spanledger.verification.check;

import org.jspecify.annotations.NullMarked;
