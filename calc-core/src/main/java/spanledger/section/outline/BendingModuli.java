package spanledger.section.outline;

/**
 * Moduli for bending about one axis through the centroid.
 *
 * @param secondMoment I about the axis, mm⁴
 * @param positiveFibre distance of the farthest fibre on the left of the axis (above, for the y
 *     axis), mm
 * @param negativeFibre distance of the farthest fibre on the right of the axis, mm
 * @param positiveModulus I per {@code positiveFibre}, mm³
 * @param negativeModulus I per {@code negativeFibre}, mm³
 * @param elasticModulus the smaller of both, mm³
 * @param plasticModulus ∫|v − v₀| dA over the neutral axis v₀ that halves the area, mm³
 * @param plasticAxis v₀: the distance of that neutral axis from the centroid, to the left of the
 *     axis positive, mm
 */
public record BendingModuli(
    double secondMoment,
    double positiveFibre,
    double negativeFibre,
    double positiveModulus,
    double negativeModulus,
    double elasticModulus,
    double plasticModulus,
    double plasticAxis) {}
