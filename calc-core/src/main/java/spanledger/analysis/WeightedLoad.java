package spanledger.analysis;

/**
 * A load on a segment with the factor it takes in a combination.
 *
 * @param load the load
 * @param weight its factor
 */
public record WeightedLoad(LocalLoad load, double weight) {}
