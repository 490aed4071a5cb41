/** Member checks of whole jobs against published and closed-form values. */
@NullMarked
package spanledger.verification.memberdesign;

import org.jspecify.annotations.NullMarked;
