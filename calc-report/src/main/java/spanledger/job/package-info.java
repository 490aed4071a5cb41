/** Job files: reading, validation and the structure they describe. */
@NullMarked
package spanledger.job;

import org.jspecify.annotations.NullMarked;
