/**
 * Physical quantities: dimensions, the units of the core (N, mm, MPa, rad, kg) and how they print.
 */
@NullMarked
package spanledger.quantity;

import org.jspecify.annotations.NullMarked;
