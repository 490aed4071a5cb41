/** What has to be cut, carried and put up: pieces, lengths and masses. */
@NullMarked
package spanledger.parts;

import org.jspecify.annotations.NullMarked;
