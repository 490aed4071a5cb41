package spanledger.joint.sharing;

/**
 * How hard the parts press on each other at one place.
 *
 * @param contact the place
 * @param force N; zero where the face gapes
 */
public record ContactForce(ContactPoint contact, double force) {}
