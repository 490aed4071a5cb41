/** Member checks of EN 1999-1-1 against published values, other methods and the laws they obey. */
@NullMarked
package spanledger.verification.en1999;

import org.jspecify.annotations.NullMarked;
