/** Described joints and feet, from job file to verdict. */
@NullMarked
package spanledger.verification.jointdesign;

import org.jspecify.annotations.NullMarked;
