package spanledger.action;

/**
 * A load case given by the user.
 *
 * @param category what kind of action it is
 * @param loads its loads
 */
public record UserCase(ActionCategory category, LoadCase loads) {}
