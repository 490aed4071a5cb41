/** Actions on the frame: load cases, combinations and the rules that place them. */
@NullMarked
package spanledger.action;

import org.jspecify.annotations.NullMarked;
