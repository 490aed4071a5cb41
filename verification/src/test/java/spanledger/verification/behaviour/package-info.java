/** Checks that rest on states: values by hand and closed forms, from job file to verdict. */
@NullMarked
package spanledger.verification.behaviour;

import org.jspecify.annotations.NullMarked;
