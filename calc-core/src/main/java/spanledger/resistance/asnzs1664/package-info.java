/** Strengths of aluminium members by AS/NZS 1664.1:1997. */
@NullMarked
package spanledger.resistance.asnzs1664;

import org.jspecify.annotations.NullMarked;
