/**
 * The search for the worst combination, place of a moving load and cut, for every effect a check
 * uses.
 */
@NullMarked
package spanledger.envelope;

import org.jspecify.annotations.NullMarked;
