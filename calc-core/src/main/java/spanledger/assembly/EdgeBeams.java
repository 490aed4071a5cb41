package spanledger.assembly;

/**
 * The beams along the north and the south side.
 *
 * @param part what they are
 * @param baysPerBeam over how many bays each runs in one piece, at least 1
 */
public record EdgeBeams(Part part, int baysPerBeam) {}
