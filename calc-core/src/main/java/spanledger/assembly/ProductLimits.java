package spanledger.assembly;

import java.util.Optional;

/**
 * Limits that the maker of the product states.
 *
 * @param bearerFromEnd how far the first and the last bearer may be from the ends, mm
 * @param postSpacing how far posts under a floor may stand apart, mm
 * @param railSupport how far posts of a guardrail may stand apart, mm
 * @param legLeast the least length from ground to floor that legs can be set to, mm
 * @param legMost the greatest, mm
 * @param source where they are stated
 */
public record ProductLimits(
    Optional<Double> bearerFromEnd,
    Optional<Double> postSpacing,
    Optional<Double> railSupport,
    Optional<Double> legLeast,
    Optional<Double> legMost,
    String source) {}
