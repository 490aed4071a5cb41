package spanledger.verdict;

import spanledger.overturning.StandingResult;

/**
 * What was found of the structure as a whole.
 *
 * @param standing tipping and sliding
 */
public record WholeStructure(StandingResult standing) {}
