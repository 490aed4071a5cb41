package spanledger.action;

/**
 * A load case with the category whose factors it takes.
 *
 * @param loads the case
 * @param category its category
 * @param words what it is, for readers
 */
public record CategorisedCase(LoadCase loads, ActionCategory category, String words) {}
