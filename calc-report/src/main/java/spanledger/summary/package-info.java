/** Ranked verdicts, machine-readable results and pictures of one job. */
@NullMarked
package spanledger.summary;

import org.jspecify.annotations.NullMarked;
