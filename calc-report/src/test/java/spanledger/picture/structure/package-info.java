@NullMarked
package spanledger.picture.structure;

import org.jspecify.annotations.NullMarked;
