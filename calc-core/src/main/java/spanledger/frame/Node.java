package spanledger.frame;

/**
 * A named place where members meet.
 *
 * @param name unique in its frame
 * @param place global coordinates, mm
 */
public record Node(String name, Vector place) {}
