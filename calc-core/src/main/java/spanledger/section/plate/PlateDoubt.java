package spanledger.section.plate;

import spanledger.section.outline.Point;

/**
 * A part of the boundary that no plate accounts for, or that the recognition is not sure about.
 *
 * @param where mm
 * @param because why someone has to look
 */
public record PlateDoubt(Point where, String because) {}
