package spanledger.assembly;

import java.util.Optional;

/**
 * The decking, which spans from bearer to bearer.
 *
 * @param finishes weight of decking and finishes, MPa (N/mm²)
 * @param baysPerFloor how many bays make one floor, which is loaded or unloaded as a whole
 * @param panel the name of the panels that it is made of, if given
 * @param opening the widest opening in those panels, mm, if known
 */
public record Deck(
    double finishes, int baysPerFloor, Optional<String> panel, Optional<Double> opening) {}
