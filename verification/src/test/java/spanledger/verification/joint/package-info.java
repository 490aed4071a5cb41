/** Proof of the sharing of joint forces and of the stiffness of joints. */
@NullMarked
package spanledger.verification.joint;

import org.jspecify.annotations.NullMarked;
