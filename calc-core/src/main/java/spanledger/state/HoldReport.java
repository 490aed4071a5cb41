package spanledger.state;

/**
 * What one hold with play, or one that acts one way, does in a state.
 *
 * @param name where it is, for example {@code support of node F1 along Z}
 * @param condition what it does
 * @param movement how far it has moved, mm or rad: of a support, the node; of a joint, node against
 *     member end
 * @param force what it bears, N or N·mm, positive with positive movement
 * @param words for readers, for example {@code foot F1 has lifted}
 */
public record HoldReport(
    String name, Condition condition, double movement, double force, String words) {}
