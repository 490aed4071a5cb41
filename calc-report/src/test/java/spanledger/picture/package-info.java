@NullMarked
package spanledger.picture;

import org.jspecify.annotations.NullMarked;
