/** Calculation procedures: ordered steps with symbol, words, unit, expression and source. */
@NullMarked
package spanledger.procedure;

import org.jspecify.annotations.NullMarked;
