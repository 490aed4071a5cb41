package spanledger.envelope;

/**
 * The worst found for one effect.
 *
 * @param instance the combination, with the place of its moving load
 * @param station the cut
 * @param utilisation demand per capacity there
 */
public record Governing(Instance instance, Station station, double utilisation) {}
