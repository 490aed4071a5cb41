package spanledger.job;

import java.util.Optional;
import spanledger.action.Figure;

/**
 * A figure that the job gives in place of the rule set's, or in addition to it.
 *
 * @param given the job's figure; its source is declared
 * @param replaced the rule set's figure; empty if the rule set has none of this id
 */
public record FigureOverride(Figure given, Optional<Figure> replaced) {}
