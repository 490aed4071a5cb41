/**
 * Frames whose behaviour is not linear: loads at fixed places solved with joints that have play,
 * holds that act one way, and in second order.
 */
@NullMarked
package spanledger.state;

import org.jspecify.annotations.NullMarked;
