package spanledger.resistance.joint;

import spanledger.resistance.member.Feed;

/**
 * What a plate leg carries across a line, none negative.
 *
 * @param outOfPlane bending about the line, N·mm
 * @param inPlane bending in the plane of the leg, N·mm
 * @param shear across the thickness and along the line together, N
 * @param axial in the plane of the leg, across the line, N
 */
public record LegForces(Feed outOfPlane, Feed inPlane, Feed shear, Feed axial) {}
