package spanledger.material;

import spanledger.provenance.Source;

/**
 * Strengths beside a weld.
 *
 * @param proofStrength 0.2 % proof strength in the heat-affected zone, MPa
 * @param ultimateStrength ultimate strength in the heat-affected zone, MPa
 * @param source where both come from
 */
public record HeatAffectedStrengths(double proofStrength, double ultimateStrength, Source source) {}
