/** Frames: nodes, members with their joints, supports. */
@NullMarked
package spanledger.frame;

import org.jspecify.annotations.NullMarked;
