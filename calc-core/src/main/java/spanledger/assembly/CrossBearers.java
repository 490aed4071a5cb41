package spanledger.assembly;

/**
 * The bearers across the platform, from edge beam to edge beam. One lies at each inner pair of
 * posts, one at {@code fromEnds} from each end; between those they divide each stretch evenly.
 *
 * @param part what they are
 * @param spacing the greatest distance between two, mm
 * @param fromEnds the distance of the first and the last from the ends of the platform, mm; 0 puts
 *     them from post to post
 */
public record CrossBearers(Part part, double spacing, double fromEnds) {}
