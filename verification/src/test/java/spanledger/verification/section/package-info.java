/** Section cases and properties of sections under moves. */
@NullMarked
package spanledger.verification.section;

import org.jspecify.annotations.NullMarked;
