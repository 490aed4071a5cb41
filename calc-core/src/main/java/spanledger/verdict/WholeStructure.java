package spanledger.verdict;

import java.util.Optional;
import spanledger.overturning.StandingResult;
import spanledger.robustness.RobustnessResult;

/**
 * What was found of the structure as a whole.
 *
 * @param standing tipping and sliding
 * @param robustness what becomes of it with a brace left out; empty if it has none
 */
public record WholeStructure(StandingResult standing, Optional<RobustnessResult> robustness) {}
