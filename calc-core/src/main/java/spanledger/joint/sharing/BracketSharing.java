package spanledger.joint.sharing;

import java.util.ArrayList;
import java.util.List;

/**
 * Brackets side by side at one member end: what each carries of the six forces there, and how the
 * end moves.
 *
 * <p>The member end is rigid, so is what holds it, and so is each bracket between two of its faces.
 * The springs of the faces alone give way: bolts and keys in the face both ways, bolts off it only
 * pulled, pieces of the bed only pressed. All bodies are balanced at once, so arms between faces
 * and between brackets count. Forces and movements are about the member end and along u, v, w.
 */
public final class BracketSharing {

  private static final int SIX = 6;

  /** Of the greatest force: less is rounding of the balance, and no bracket need resist it. */
  private static final double ROUNDING = 1e-10;

  private static final String[] WORDS = {
    "a force along u",
    "a force along v",
    "a force along w",
    "a moment about u",
    "a moment about v",
    "a moment about w"
  };

  /** A spring, and its bracket if it is at the face of it that is next to the member, or -1. */
  private record Own(SpringLine line, int bracket) {}

  private final List<List<PlacedFace>> brackets;
  private final int freedoms;
  private final double reach;
  private final List<Own> springs = new ArrayList<>();
  private final SpringBody bodies;

  /**
   * @param brackets the faces of each, one behind the other, from what holds the member to it
   */
  public BracketSharing(List<List<PlacedFace>> brackets, Softening softening) {
    this.brackets = brackets.stream().map(List::copyOf).toList();
    int between = this.brackets.stream().mapToInt(faces -> faces.size() - 1).sum();
    freedoms = SIX * (1 + between);
    reach =
        this.brackets.stream().flatMap(List::stream).mapToDouble(PlacedFace::reach).max().orElse(1);
    int body = 1;
    for (int i = 0; i < this.brackets.size(); i++) {
      List<PlacedFace> faces = this.brackets.get(i);
      for (int j = 0; j < faces.size(); j++) {
        boolean last = j == faces.size() - 1;
        int beyond = last ? 0 : body + j;
        int before = j == 0 ? -1 : body + j - 1;
        for (SpringLine spring : faces.get(j).springs(softening)) {
          springs.add(new Own(spring.between(before, beyond, freedoms), last ? i : -1));
        }
      }
      body += faces.size() - 1;
    }
    double[] units = units();
    bodies =
        new SpringBody(freedoms, springs.stream().map(own -> own.line().inUnits(units)).toList());
  }

  private double[] units() {
    double[] units = new double[freedoms];
    for (int i = 0; i < freedoms; i++) {
      units[i] = i % SIX < 3 ? 1 : reach;
    }
    return units;
  }

  /** The farthest from the member end that anything is, mm. */
  public double reach() {
    return reach;
  }

  /**
   * Shares.
   *
   * @param forces that the member end puts on its joint
   * @throws UnresistedFaceException if nothing resists one of them
   */
  public BracketShares share(FaceForces forces) {
    double[] movement = movement(forces);
    List<FaceForces> shares = new ArrayList<>();
    double least = ROUNDING * forces.greatest(reach);
    for (int i = 0; i < brackets.size(); i++) {
      shares.add(share(i, movement).whole(least, reach));
    }
    List<List<FaceMovement>> faces = new ArrayList<>();
    int body = 1;
    for (List<PlacedFace> own : brackets) {
      List<FaceMovement> moves = new ArrayList<>();
      for (int j = 0; j < own.size(); j++) {
        double[] beyond = of(j == own.size() - 1 ? 0 : body + j, movement);
        double[] before = j == 0 ? new double[SIX] : of(body + j - 1, movement);
        for (int k = 0; k < SIX; k++) {
          beyond[k] -= before[k];
        }
        moves.add(own.get(j).movement(beyond));
      }
      faces.add(moves);
      body += own.size() - 1;
    }
    return new BracketShares(forces, shares, faces, moved(movement));
  }

  /**
   * How the member end moves.
   *
   * @throws UnresistedFaceException if nothing resists one of the forces
   */
  public FaceMovement moved(FaceForces forces) {
    return moved(movement(forces));
  }

  private static FaceMovement moved(double[] all) {
    return new FaceMovement(all[0], all[1], all[2], all[3], all[4], all[5]);
  }

  private static double[] of(int body, double[] movement) {
    double[] own = new double[SIX];
    System.arraycopy(movement, SIX * body, own, 0, SIX);
    return own;
  }

  private double[] movement(FaceForces forces) {
    double[] load = load(forces.whole(ROUNDING * forces.greatest(reach), reach));
    double[] movement =
        bodies.balance(load).orElseThrow(() -> new UnresistedFaceException(unresisted(load)));
    double[] units = units();
    for (int i = 0; i < freedoms; i++) {
      movement[i] /= units[i];
    }
    return movement;
  }

  private double[] load(FaceForces forces) {
    double[] load = new double[freedoms];
    load[0] = forces.axial();
    load[1] = forces.shearY();
    load[2] = forces.shearZ();
    load[3] = forces.torsion() / reach;
    load[4] = forces.momentY() / reach;
    load[5] = forces.momentZ() / reach;
    return load;
  }

  /** What the springs of a bracket next to the member carry. */
  private FaceForces share(int bracket, double[] movement) {
    double[] sum = new double[SIX];
    for (Own own : springs) {
      if (own.bracket() == bracket) {
        double force = own.line().force(own.line().stretch(movement));
        for (int k = 0; k < SIX; k++) {
          sum[k] += force * own.line().along(k);
        }
      }
    }
    return new FaceForces(sum[0], sum[1], sum[2], sum[3], sum[4], sum[5]);
  }

  private String unresisted(double[] load) {
    List<String> alone = new ArrayList<>();
    for (int i = 0; i < SIX; i++) {
      double[] single = new double[freedoms];
      single[i] = load[i];
      if (bodies.balance(single).isEmpty()) {
        alone.add(WORDS[i]);
      }
    }
    return "Nothing in the brackets of the joint resists "
        + (alone.isEmpty() ? "the forces together, as they act here" : String.join(" and ", alone))
        + ". Add a bolt, a key, or another bracket that holds it.";
  }
}
