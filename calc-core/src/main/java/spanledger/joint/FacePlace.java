package spanledger.joint;

/**
 * A place in a joint face, from the face's origin.
 *
 * @param a along the face's first axis, mm
 * @param b along its second, mm
 */
public record FacePlace(double a, double b) {}
