/**
 * Access structures in the words of the trade (platforms, posts, braces, guardrails, stairs) and
 * the frame that they make.
 */
@NullMarked
package spanledger.assembly;

import org.jspecify.annotations.NullMarked;
