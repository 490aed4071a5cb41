/**
 * Strengths of aluminium members by the Aluminum Design Manual 2020, and the forms it has in common
 * with AS/NZS 1664.1.
 */
@NullMarked
package spanledger.resistance.adm;

import org.jspecify.annotations.NullMarked;
