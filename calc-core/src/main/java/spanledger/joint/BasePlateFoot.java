package spanledger.joint;

import java.util.List;
import java.util.Optional;
import spanledger.frame.Vector;
import spanledger.provenance.Source;

/**
 * A foot that stands on the ground with a base plate, with or without anchors.
 *
 * @param name its name in the job
 * @param lengthX of the plate along its first side, X if it is not turned, mm
 * @param lengthY along its second side, mm
 * @param allowablePressure on the ground, at the level of the strength combinations, MPa
 * @param friction between plate and ground, if the foot may count on it
 * @param anchors places of the anchors from the middle of the plate along its sides; empty if there
 *     are none
 * @param offset the middle of its underside from the node, along its first side, its second side
 *     and square to it, upwards, mm
 * @param bending how it bends; taken as stiff, and said to be unchecked, if that is not described
 * @param spindle between the plate and the post, if there is one; the node is on the ground
 * @param source where the description comes from
 */
public record BasePlateFoot(
    String name,
    double lengthX,
    double lengthY,
    double allowablePressure,
    Optional<FaceFriction> friction,
    List<FacePlace> anchors,
    Vector offset,
    Optional<PlateBending> bending,
    Optional<Spindle> spindle,
    Source source)
    implements FootType {

  /**
   * @throws IllegalArgumentException if a size is not above zero
   */
  public BasePlateFoot {
    anchors = List.copyOf(anchors);
    if (!(lengthX > 0) || !(lengthY > 0) || !(allowablePressure > 0)) {
      throw new IllegalArgumentException("Foot " + name + " needs sizes above zero.");
    }
  }
}
