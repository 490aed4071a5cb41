/**
 * Pictures of structures: views with dimensions, how much of their strength members use, how they
 * bend and move.
 */
@NullMarked
package spanledger.picture.structure;

import org.jspecify.annotations.NullMarked;
