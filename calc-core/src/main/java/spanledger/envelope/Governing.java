package spanledger.envelope;

/**
 * The worst found for one effect.
 *
 * @param instance the combination, with the place of its moving load
 * @param station the cut
 * @param value the size of the effect there: a utilisation for strength measures, mm for
 *     deflections; with its sign for forces, N or N·mm
 */
public record Governing(Instance instance, Station station, double value) {}
