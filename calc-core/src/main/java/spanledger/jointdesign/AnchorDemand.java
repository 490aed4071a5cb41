package spanledger.jointdesign;

import spanledger.envelope.Instance;

/**
 * What an anchor of a foot must carry under one combination; its design is its maker's approval's.
 *
 * @param foot the supported node
 * @param anchor which anchor
 * @param instance the combination
 * @param tension N, without prying
 * @param shear N
 */
public record AnchorDemand(
    String foot, String anchor, Instance instance, double tension, double shear) {}
