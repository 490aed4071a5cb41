package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.joint.JointFace;
import spanledger.joint.Ply;
import spanledger.provenance.Source;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;

/**
 * The plies of a face one after the other, where the job says to which part each belongs. Plies of
 * one part that touch are a layer; bolts are sheared between layers.
 */
public final class PlyStack {

  /** Layers of a fork around a tab. */
  private static final int FORK = 3;

  private final JointFace face;
  private final String where;
  private final Source source;
  private final List<List<Ply>> layers = new ArrayList<>();
  private final List<Working> shares = new ArrayList<>();

  private PlyStack(JointFace face, String where, Source source) {
    this.face = face;
    this.where = where;
    this.source = source;
    for (Ply ply : face.plies()) {
      if (layers.isEmpty() || !layers.get(layers.size() - 1).get(0).side().equals(ply.side())) {
        layers.add(new ArrayList<>());
      }
      layers.get(layers.size() - 1).add(ply);
    }
    for (int layer = 0; layer < layers.size(); layer++) {
      for (Ply ply : layers.get(layer)) {
        shares.add(share(layer, ply));
      }
    }
  }

  /**
   * The stack; empty if the job does not say to which part the plies belong.
   *
   * @param where the joint and the face, in words
   * @param source where the description comes from
   */
  public static Optional<PlyStack> of(JointFace face, String where, Source source) {
    return face.plies().get(0).side().isEmpty()
        ? Optional.empty()
        : Optional.of(new PlyStack(face, where, source));
  }

  /** What part of the force of a bolt each ply bears, in order: runs of {@link PlyShare}. */
  public List<Working> shares() {
    return List.copyOf(shares);
  }

  private Working share(int layer, Ply ply) {
    String name = where + ", " + ply.name();
    boolean outer = layer == 0 || layer == layers.size() - 1;
    boolean prong = outer && layers.size() == FORK;
    double others = 0;
    for (Ply other : layers.get(layer)) {
      others +=
          other.name().equals(ply.name())
              ? 0
              : other.thickness() * other.alloy().ultimateStrength();
    }
    return Working.of(PlyShare.COMPILED, name)
        .given("n", face.shearPlanes(), where + ", shear planes between the plies", source)
        .given("n_i", outer ? 1 : 2, name + ", planes beside it and its like", source)
        .given("a_i", prong ? lever(layer) : 0, name + ", lever of this prong", source)
        .given(
            "a_o", prong ? lever(FORK - 1 - layer) : 0, name + ", lever of the other prong", source)
        .given("t", ply.thickness(), name + ", thickness", source)
        .given("f_u", ply.alloy().ultimateStrength(), ply.name() + ", f_u", ply.alloy().source())
        .given("C_o", others, name + ", its like beside it, thickness times f_u", source)
        .run();
  }

  /** From the middle of the inner layer of a fork to that of an outer one, mm. */
  private double lever(int outer) {
    return (thickness(1) + thickness(outer)) / 2;
  }

  private double thickness(int layer) {
    return layers.get(layer).stream().mapToDouble(Ply::thickness).sum();
  }

  /** What a ply bears of two forces: steps P_1, P_2. */
  Working force(int ply, String name, Feed first, Feed second) {
    return Working.of(PlyForce.COMPILED, name + " in " + face.plies().get(ply).name())
        .with("F_1", first)
        .with("F_2", second)
        .from(shares.get(ply), "s_i", "s_i")
        .run();
  }

  /** The shear of a bolt in the plane that has most: step F_p. */
  Working planeShear(String name, Feed shear) {
    return Working.of(PlaneShear.COMPILED, name)
        .with("F_v", shear)
        .from(shares.get(0), "s_1", "s_g")
        .from(shares.get(shares.size() - 1), "s_2", "s_g")
        .run();
  }
}
