/** The command line as its users meet it, with real jobs. */
@NullMarked
package spanledger.verification.cli;

import org.jspecify.annotations.NullMarked;
