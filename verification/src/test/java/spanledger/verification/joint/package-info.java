/**
 * Proof of the sharing of joint forces, of the stiffness of joints and of the resistance of parts.
 */
@NullMarked
package spanledger.verification.joint;

import org.jspecify.annotations.NullMarked;
