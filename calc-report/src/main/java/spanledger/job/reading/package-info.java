/**
 * How the decoders of job and outline files get at keys, quantities and words, and report faults.
 */
@NullMarked
package spanledger.job.reading;

import org.jspecify.annotations.NullMarked;
