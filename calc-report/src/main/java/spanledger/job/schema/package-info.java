/** The published form of a job file and its faults in words. */
@NullMarked
package spanledger.job.schema;

import org.jspecify.annotations.NullMarked;
