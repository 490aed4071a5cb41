package spanledger.resistance.member;

import spanledger.quantity.Dimension;

/**
 * What a load case does at a cut of a member. A {@code double[]} of these, by {@link #ordinal}, is
 * what a {@link MemberEvaluator} takes.
 *
 * <p>Signs as in {@link spanledger.analysis.SectionForces}: N is positive in tension, M_y when it
 * stretches the fibres at +z, M_z when it stretches those at -y. All moments are about the
 * principal axes that the section's properties are given for.
 */
public enum Effect {
  N("N", "axial force, tension positive"),
  V_Y("V_y", "shear along y"),
  V_Z("V_z", "shear along z"),
  T("T", "torque"),
  M_Y("M_y", "bending moment about y"),
  M_Z("M_z", "bending moment about z"),
  /** From the start of the member. */
  PLACE("x", "place of the cut along the member"),
  /** From 0 at one end of the buckling length to 1 at the other; ½ is on the safe side. */
  PART_Y("ξ_y", "place of the cut in the buckling length about y"),
  PART_Z("ξ_z", "place of the cut in the buckling length about z"),
  PART_LATERAL("ξ_LT", "place of the cut between lateral restraints"),
  /** Of M_y over the length between lateral restraints that holds the cut, never negative. */
  M_Y_MAX("M_y_max", "greatest size of M_y between restraints"),
  M_Y_START("M_y_1", "M_y at the first restraint"),
  M_Y_QUARTER("M_y_A", "M_y at a quarter of the way between restraints"),
  M_Y_MIDDLE("M_y_B", "M_y half-way between restraints"),
  M_Y_THREE_QUARTERS("M_y_C", "M_y at three quarters between restraints"),
  M_Y_END("M_y_2", "M_y at the second restraint"),
  M_Z_MAX("M_z_max", "greatest size of M_z between restraints"),
  M_Z_START("M_z_1", "M_z at the first restraint"),
  M_Z_QUARTER("M_z_A", "M_z at a quarter of the way between restraints"),
  M_Z_MIDDLE("M_z_B", "M_z half-way between restraints"),
  M_Z_THREE_QUARTERS("M_z_C", "M_z at three quarters between restraints"),
  M_Z_END("M_z_2", "M_z at the second restraint");

  private final String symbol;
  private final String words;

  Effect(String symbol, String words) {
    this.symbol = symbol;
    this.words = words;
  }

  /** The symbol of the input in the procedures of checks at a cut. */
  public String symbol() {
    return symbol;
  }

  public String words() {
    return words;
  }

  public Dimension dimension() {
    return switch (this) {
      case N, V_Y, V_Z -> Dimension.FORCE;
      case PLACE -> Dimension.LENGTH;
      case PART_Y, PART_Z, PART_LATERAL -> Dimension.NONE;
      default -> Dimension.MOMENT;
    };
  }

  /** No effect at all, at the start of the member and in the middle of every buckling length. */
  public static double[] none() {
    double[] effects = new double[values().length];
    effects[PART_Y.ordinal()] = 0.5;
    effects[PART_Z.ordinal()] = 0.5;
    effects[PART_LATERAL.ordinal()] = 0.5;
    return effects;
  }

  /**
   * Effects of six internal forces whose moments are the same all along the member: on the safe
   * side for every check that looks at the shape of the moment diagram.
   *
   * @param forces N, V_y, V_z, T, M_y, M_z
   */
  public static double[] uniform(double... forces) {
    double[] effects = none();
    System.arraycopy(forces, 0, effects, 0, 6);
    effects[M_Y_MAX.ordinal()] = Math.abs(forces[4]);
    effects[M_Z_MAX.ordinal()] = Math.abs(forces[5]);
    for (int i = M_Y_START.ordinal(); i <= M_Y_END.ordinal(); i++) {
      effects[i] = forces[4];
    }
    for (int i = M_Z_START.ordinal(); i <= M_Z_END.ordinal(); i++) {
      effects[i] = forces[5];
    }
    return effects;
  }
}
