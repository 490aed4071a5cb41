package spanledger.joint.sharing;

import java.util.ArrayList;
import java.util.List;

/** Balances three forces of a face with its springs, of which each has its own unit. */
final class FaceBalance {

  private static final double WIDEST = 1e5 * (1 + 1e-9);

  private final String[] words;
  private final double[] unit = new double[3];
  private final SpringBody body;

  /**
   * @param springs by movement
   * @param reach length that turns moments into forces and turns into shifts, mm
   * @param words what each of the three forces is called
   * @throws IllegalArgumentException if the stiffnesses lie too far apart
   */
  FaceBalance(List<SpringLine> springs, double reach, String[] words) {
    this.words = words.clone();
    for (int i = 0; i < 3; i++) {
      unit[i] = words[i].contains("about") ? reach : 1;
    }
    List<SpringLine> scaled = new ArrayList<>();
    for (SpringLine spring : springs) {
      scaled.add(spring.inUnits(unit));
    }
    requireComparable(springs);
    body = new SpringBody(3, scaled);
  }

  /**
   * The movement in which springs and forces balance.
   *
   * @param load the three forces; not modified
   * @throws UnresistedFaceException if nothing resists
   */
  double[] movement(double[] load) {
    double[] forces = {load[0] / unit[0], load[1] / unit[1], load[2] / unit[2]};
    double[] movement =
        body.balance(forces)
            .orElseThrow(() -> new UnresistedFaceException(unresisted(body, forces, words)));
    for (int i = 0; i < 3; i++) {
      movement[i] /= unit[i];
    }
    return movement;
  }

  /** Beyond this, rounding of the movement is no longer small in the force of the stiffest part. */
  private static void requireComparable(List<SpringLine> springs) {
    double least =
        springs.stream().mapToDouble(SpringLine::stiffness).filter(k -> k > 0).min().orElse(1);
    double greatest = springs.stream().mapToDouble(SpringLine::stiffness).max().orElse(1);
    if (greatest > WIDEST * least) {
      throw new IllegalArgumentException(
          "The stiffnesses at the joint's face lie too far apart to share forces by them: from "
              + least
              + " to "
              + greatest
              + " N/mm. Give a hard contact at most a hundred thousand times the stiffness of the softest"
              + " bolt or key, and a part that does not resist none.");
    }
  }

  private static String unresisted(SpringBody body, double[] forces, String[] words) {
    List<String> alone = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      double[] single = new double[3];
      single[i] = forces[i];
      if (body.balance(single).isEmpty()) {
        alone.add(words[i]);
      }
    }
    String what =
        alone.isEmpty()
            ? String.join(", ", words) + " together, as they act here"
            : String.join(" and ", alone) + ", as it acts here";
    return "Nothing at the joint's face resists "
        + what
        + ". Add a bolt, a key or a place where the parts press on each other, or let another joint"
        + " carry it.";
  }
}
