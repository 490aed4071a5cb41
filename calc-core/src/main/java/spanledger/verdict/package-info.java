/** What the checks found: passed, failed, not checked, or a demand handed on. */
@NullMarked
package spanledger.verdict;

import org.jspecify.annotations.NullMarked;
