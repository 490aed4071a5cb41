/** Published and derived cases for the frame analysis: data files, their reader and one runner. */
@NullMarked
package spanledger.verification.frame;

import org.jspecify.annotations.NullMarked;
