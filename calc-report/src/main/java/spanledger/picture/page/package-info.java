/** Words on drawings: boxes that words take, labels that keep clear of each other, legends. */
@NullMarked
package spanledger.picture.page;

import org.jspecify.annotations.NullMarked;
