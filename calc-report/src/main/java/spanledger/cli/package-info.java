/** The command line. */
@NullMarked
package spanledger.cli;

import org.jspecify.annotations.NullMarked;
