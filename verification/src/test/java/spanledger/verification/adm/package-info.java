/** Strengths by the Aluminum Design Manual and AS/NZS 1664.1 against values found apart. */
@NullMarked
package spanledger.verification.adm;

import org.jspecify.annotations.NullMarked;
