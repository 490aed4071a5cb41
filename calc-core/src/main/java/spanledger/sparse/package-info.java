/** Symmetric sparse matrices of six by six blocks, their order of elimination and their factors. */
@NullMarked
package spanledger.sparse;

import org.jspecify.annotations.NullMarked;
