/** Bolts: strengths by grade, sizes by thread. */
@NullMarked
package spanledger.bolt;

import org.jspecify.annotations.NullMarked;
