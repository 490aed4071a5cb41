/**
 * Linear analysis of frames: the mechanics of a segment as procedures, assembly, solution and its
 * proof.
 */
@NullMarked
package spanledger.analysis;

import org.jspecify.annotations.NullMarked;
