package spanledger.joint.sharing;

/**
 * What the member puts on one bolt.
 *
 * @param bolt the bolt
 * @param shearY along +y, N
 * @param shearZ along +z, N
 * @param shear resultant of both, N
 * @param tension N; without prying
 */
public record BoltForce(
    BoltPlace bolt, double shearY, double shearZ, double shear, double tension) {}
