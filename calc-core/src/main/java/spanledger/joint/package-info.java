/**
 * Joints and feet described by their parts: faces, bolts, keys, slot lips, bracket legs, packing.
 */
@NullMarked
package spanledger.joint;

import org.jspecify.annotations.NullMarked;
