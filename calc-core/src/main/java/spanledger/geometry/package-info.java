/** Whether people can walk, climb and hold on as the rules ask: heights, gaps, rises and goings. */
@NullMarked
package spanledger.geometry;

import org.jspecify.annotations.NullMarked;
