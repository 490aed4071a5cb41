/** Sharing of the six forces at a joint's face to its bolts, keys and bearing edges. */
@NullMarked
package spanledger.joint.sharing;

import org.jspecify.annotations.NullMarked;
