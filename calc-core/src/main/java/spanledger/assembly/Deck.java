package spanledger.assembly;

/**
 * The decking, which spans from bearer to bearer.
 *
 * @param finishes weight of decking and finishes, MPa (N/mm²)
 * @param baysPerFloor how many bays make one floor, which is loaded or unloaded as a whole
 */
public record Deck(double finishes, int baysPerFloor) {}
