/** The stiffness of a frame under axial forces, and the factor at which it buckles. */
@NullMarked
package spanledger.stability;

import org.jspecify.annotations.NullMarked;
