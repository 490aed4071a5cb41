/** Outlines from drawings in DXF (ASCII). */
@NullMarked
package spanledger.job.dxf;

import org.jspecify.annotations.NullMarked;
