/** What can be wrong with a job file, and how it is told. */
@NullMarked
package spanledger.job.problem;

import org.jspecify.annotations.NullMarked;
