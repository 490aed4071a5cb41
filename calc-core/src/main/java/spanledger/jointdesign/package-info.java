/**
 * Joint checks of a frame: which member ends and supports have which joint, what each is to carry
 * under every combination, and how much of its parts is used.
 */
@NullMarked
package spanledger.jointdesign;

import org.jspecify.annotations.NullMarked;
