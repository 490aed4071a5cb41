/** Natural frequencies and modes of frames with the mass that they carry. */
@NullMarked
package spanledger.vibration;

import org.jspecify.annotations.NullMarked;
