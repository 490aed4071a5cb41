/**
 * Outlines of extrusions, made of straight and arc edges, and what follows from them exactly:
 * areas, moments and moduli.
 */
@NullMarked
package spanledger.section.outline;

import org.jspecify.annotations.NullMarked;
