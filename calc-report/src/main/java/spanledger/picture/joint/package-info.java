/** Pictures of joints with the forces of their bolts. */
@NullMarked
package spanledger.picture.joint;

import org.jspecify.annotations.NullMarked;
