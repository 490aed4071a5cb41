package spanledger.resistance.member;

import spanledger.provenance.Source;

/**
 * A number with where it comes from, on its way into a calculation.
 *
 * @param value in core units
 * @param origin what it is a value of
 * @param source where it comes from
 */
public record Figured(double value, String origin, Source source) {}
