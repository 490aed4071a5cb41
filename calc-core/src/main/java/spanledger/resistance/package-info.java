/** Resistances of sections, members and joints, each as a calculation procedure. */
@NullMarked
package spanledger.resistance;

import org.jspecify.annotations.NullMarked;
