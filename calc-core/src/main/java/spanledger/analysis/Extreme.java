package spanledger.analysis;

/**
 * A greatest or least value along a segment.
 *
 * @param value N, N·mm or mm
 * @param x where, mm from the segment's start
 * @param side on which side of a load there
 */
public record Extreme(double value, double x, Side side) {}
