package spanledger.joint;

import java.util.Optional;
import spanledger.provenance.Source;

/**
 * A bought-in foot, such as a castor or a levelling foot, with capacities that its maker declares
 * at the level of the strength combinations. It bears no moments.
 *
 * @param name its name in the job
 * @param compression what it bears, N
 * @param tension what it holds down, N; 0 if nothing
 * @param shear what it bears along the ground, N; empty if only friction holds it
 * @param friction on the ground, brakes on, if it may be counted on
 * @param source where the capacities come from
 */
public record DeclaredFoot(
    String name,
    double compression,
    double tension,
    Optional<Double> shear,
    Optional<FaceFriction> friction,
    Source source)
    implements FootType {

  /**
   * @throws IllegalArgumentException if a capacity is out of its range
   */
  public DeclaredFoot {
    if (!(compression > 0) || !(tension >= 0) || !(shear.orElse(1.0) > 0)) {
      throw new IllegalArgumentException("Foot " + name + " needs capacities above zero.");
    }
  }
}
