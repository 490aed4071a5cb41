@NullMarked
package spanledger.picture.section;

import org.jspecify.annotations.NullMarked;
