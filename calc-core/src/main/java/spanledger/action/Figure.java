package spanledger.action;

import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * One figure of a rule set.
 *
 * @param id its name in the rule set, for example {@code floor.area}
 * @param words what it is
 * @param text the value as its author wrote it, with unit
 * @param value the value in core units
 * @param dimension its dimension
 * @param source where it comes from
 * @param note anything a reader should know, may be empty
 */
public record Figure(
    String id,
    String words,
    String text,
    double value,
    Dimension dimension,
    Source source,
    String note) {}
