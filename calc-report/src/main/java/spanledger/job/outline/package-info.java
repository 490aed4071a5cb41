/** Outline files: sections as they are drawn, in JSON or taken from a DXF drawing. */
@NullMarked
package spanledger.job.outline;

import org.jspecify.annotations.NullMarked;
