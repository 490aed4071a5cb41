package spanledger.section;

import spanledger.section.outline.Outline;

/**
 * One piece of an extruded section.
 *
 * @param name unique in its section; empty if there is but one piece
 * @param outline its outline, mm
 */
public record ExtrusionPart(String name, Outline outline) {}
