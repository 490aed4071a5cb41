/** The flat and curved plates that an extruded outline is made of, for local buckling. */
@NullMarked
package spanledger.section.plate;

import org.jspecify.annotations.NullMarked;
