/** Line drawings, and their files for browsers (SVG) and for workbooks (PNG). */
@NullMarked
package spanledger.picture;

import org.jspecify.annotations.NullMarked;
