/**
 * Whether a structure stands as a whole: tipping about every edge of its feet, sliding in every
 * direction, and the ballast or friction that it needs. The structure is one rigid body here; how
 * its feet share the load is left to the frame analysis.
 */
@NullMarked
package spanledger.overturning;

import org.jspecify.annotations.NullMarked;
