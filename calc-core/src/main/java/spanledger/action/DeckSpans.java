package spanledger.action;

/**
 * How far the decking of a floor spans.
 *
 * @param greatest the greatest distance between neighbouring lines of members, mm
 * @param from a member of the one line
 * @param to a member of the other
 * @param overhang the greatest reach beyond an outermost line, mm; 0 if there is none
 */
public record DeckSpans(double greatest, String from, String to, double overhang) {}
