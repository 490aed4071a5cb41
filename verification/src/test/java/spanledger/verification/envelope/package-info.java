/** The search for what governs, against searches that know no short cuts and against statics. */
@NullMarked
package spanledger.verification.envelope;

import org.jspecify.annotations.NullMarked;
