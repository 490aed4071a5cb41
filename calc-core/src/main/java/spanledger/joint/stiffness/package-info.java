/** Stiffness and moment resistance of joints, from their parts or from tests. */
@NullMarked
package spanledger.joint.stiffness;

import org.jspecify.annotations.NullMarked;
