package spanledger.jointdesign;

import spanledger.envelope.Instance;

/**
 * What an anchor of a foot must carry under one combination; its design is its maker's approval's.
 *
 * @param foot the supported node
 * @param anchor which anchor
 * @param first its place from the middle of the plate along the plate's first side, mm
 * @param second along its second side, mm
 * @param ofTension whether this is its greatest tension, or else its greatest shear
 * @param instance the combination
 * @param tension N, without prying
 * @param shear its size, N
 * @param shearFirst along the plate's first side, N
 * @param shearSecond along its second side, N
 */
public record AnchorDemand(
    String foot,
    String anchor,
    double first,
    double second,
    boolean ofTension,
    Instance instance,
    double tension,
    double shear,
    double shearFirst,
    double shearSecond) {}
