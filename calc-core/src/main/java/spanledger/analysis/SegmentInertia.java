package spanledger.analysis;

import static spanledger.procedure.Formulas.number;

import java.util.ArrayList;
import java.util.List;
import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * The forces that set an evenly heavy segment in motion when it vibrates: λ times its consistent
 * mass times the movement, by its ends and in its axes. Between its ends the segment takes a cubic
 * line; joints let its own ends turn and shift as they do in its stiffness, so that the line is the
 * one of least strain. Turning inertia of cross-sections counts in twisting only.
 *
 * <p>Inputs: L, cosines, arms and movements as in {@link BasicDeformations}, e and φ of it, the end
 * moments M_y1 .. M_z2 of {@link EndForces} without load, f and s of {@link SegmentStiffness}, c
 * and Θ of {@link BarInertia}, the mass m (kg), λ = ω² (N/(mm·kg)), and o: 1 for members of a
 * floor, else 0. Steps: i_x1 .. i_z2 (forces) and j_x1 .. j_z2 (moments), as the nodes exert them;
 * W = λ uᵀMu; E_o and E (mass times squared shifts of the nodes: of floors up and down, of all).
 *
 * <p>Reference: J. S. Archer, "Consistent mass matrix for distributed mass systems", J. Struct.
 * Div. ASCE 89 (1963), ST4, pp. 161-178 (from memory).
 */
public final class SegmentInertia {

  private static final Source CONSISTENT_MASS =
      Source.fromMemory(
          "J. S. Archer, Consistent mass matrix for distributed mass systems, J. Struct. Div. ASCE"
              + " 89 (1963)",
          "ST4, pp. 161-178");

  private static final Dimension SWINGING = Dimension.whole(2, 0, 1, 0);

  /** The definition. */
  public static final Procedure PROCEDURE = new SegmentInertia().procedure();

  private final Procedure.Builder p =
      Procedure.named("segment-inertia", "Forces that set a segment in motion");
  private final Reference length = p.input("L", "length", Dimension.LENGTH, Domain.POSITIVE);
  private final Reference[][] axes = SegmentAxes.inputs(p);
  private final Reference[][] arms = SegmentAxes.armInputs(p);
  private final SegmentAxes.Movements moved = SegmentAxes.movementInputs(p);
  private final Reference mass =
      p.input("m", "mass of the segment and of what lies on it", Dimension.MASS);
  private final Reference lambda =
      p.input("λ", "square of the angular frequency", Dimension.whole(-1, 1, -1, 0));
  private final List<Expression> work = new ArrayList<>();

  private SegmentInertia() {}

  private Procedure procedure() {
    along();
    twisting();
    Expression heavy = lambda.times(mass);
    bending(heavy, "z", "y", 2, -1);
    bending(heavy, "y", "z", 1, 1);
    p.step("W", "λ times the swinging mass", Dimension.MOMENT, sum(work), CONSISTENT_MASS);
    Reference floor = p.input("o", "1 for members of a floor, else 0", Dimension.NONE);
    Reference[][] u = moved.shift();
    Expression rising = u[0][2].pow(2).plus(u[1][2].pow(2));
    Expression level =
        u[0][0].pow(2).plus(u[0][1].pow(2)).plus(u[1][0].pow(2)).plus(u[1][1].pow(2));
    energy("E_o", ", of floors up and down", floor.times(mass).times(rising));
    energy("E", "", mass.times(rising.plus(level)));
    return p.build();
  }

  private static Expression sum(List<Expression> terms) {
    return terms.stream().reduce(Expression::plus).orElseThrow();
  }

  private void energy(String symbol, String of, Expression formula) {
    p.step(
        symbol,
        "mass times squared shifts of the nodes" + of,
        SWINGING,
        formula,
        MechanicsSources.STATICS);
  }

  private void along() {
    Reference stretch = p.input("e", "stretch", Dimension.LENGTH);
    Reference[] share = shares("a", "stretch");
    Reference[] w = new Reference[2];
    for (int end = 0; end < 2; end++) {
      Expression given = share[end].times(stretch);
      Expression node = endShift(end, 0);
      w[end] = shift("x", end, end == 0 ? node.plus(given) : node.minus(given));
    }
    Expression heavy = lambda.times(mass);
    Reference[] own = new Reference[2];
    for (int end = 0; end < 2; end++) {
      own[end] =
          inertia(
              "p_x" + (end + 1), "force on the bar's end along x", heavy.times(straight(w, end)));
    }
    work.add(own[0].times(w[0]).plus(own[1].times(w[1])));
    for (int end = 0; end < 2; end++) {
      force("x", end, handedOn(own, share, end));
    }
  }

  private void twisting() {
    Reference twist = p.input("φ", "twist", Dimension.NONE);
    Reference polar = p.input("Θ", "inertia about the axis", SWINGING);
    Reference[] share = shares("x", "twist");
    Reference[] w = new Reference[2];
    for (int end = 0; end < 2; end++) {
      Expression given = share[end].times(twist);
      Expression node = SegmentAxes.along(axes[0], moved.turn()[end]);
      w[end] =
          p.step(
              "τ_" + (end + 1),
              "turn of the bar's end " + (end + 1) + " about x",
              Dimension.NONE,
              end == 0 ? node.plus(given) : node.minus(given),
              MechanicsSources.STATICS);
    }
    Reference[] own = new Reference[2];
    for (int end = 0; end < 2; end++) {
      own[end] =
          p.step(
              "q_x" + (end + 1),
              "moment on the bar's end about x",
              Dimension.MOMENT,
              lambda.times(polar).times(straight(w, end)),
              CONSISTENT_MASS);
    }
    work.add(own[0].times(w[0]).plus(own[1].times(w[1])));
    for (int end = 0; end < 2; end++) {
      moment("x", end, handedOn(own, share, end));
    }
  }

  private Reference[] shares(String mark, String what) {
    Reference[] share = new Reference[2];
    for (int end = 0; end < 2; end++) {
      share[end] =
          p.input(
              "c_" + mark + (end + 1),
              "share of the " + what + " in the joint at end " + (end + 1),
              Dimension.NONE);
    }
    return share;
  }

  /** What a node feels of both ends of the bar, of which one goes partly with the other. */
  private static Expression handedOn(Reference[] own, Reference[] share, int end) {
    int other = 1 - end;
    return own[end].times(number(1).minus(share[end])).plus(own[other].times(share[other]));
  }

  /** ∫ of the shape of an end, straight between both ends, times the shape of the movement. */
  private static Expression straight(Reference[] w, int end) {
    return w[end].over(3).plus(w[1 - end].over(6));
  }

  /**
   * Bending about an axis.
   *
   * @param local the axis along which it moves, 1 or 2
   * @param sign of the slope by a positive turn: a turn about y lowers the far end, one about z
   *     lifts it
   */
  private void bending(Expression heavy, String along, String about, int local, int sign) {
    Reference near = flexibility(about, "11", "by a unit moment at it");
    Reference far = flexibility(about, "12", "by a unit moment at the other");
    Reference[] s = EndForces.stiffnessInputs(p, about);
    Reference[] m = new Reference[2];
    for (int end = 0; end < 2; end++) {
      m[end] =
          p.input(
              "M_" + about + (end + 1),
              "moment about " + about + " at end " + (end + 1),
              Dimension.MOMENT);
    }
    Reference[] w = new Reference[2];
    Reference[] h = new Reference[2];
    for (int end = 0; end < 2; end++) {
      w[end] = shift(along, end, endShift(end, local));
    }
    for (int end = 0; end < 2; end++) {
      Expression slope = length.times(near.times(m[end]).plus(far.times(m[1 - end])));
      h[end] =
          p.step(
              "h_" + along + (end + 1),
              "slope of the bar's end " + (end + 1) + " from the chord, times the length",
              Dimension.LENGTH,
              sign > 0 ? slope : slope.negated(),
              CONSISTENT_MASS);
    }
    // ∫ of products of the shapes 1-ξ, ξ, ξ(1-ξ)², -ξ²(1-ξ).
    Reference p1 =
        inertia(
            "p_" + along + "1",
            "force on the bar's end along " + along,
            heavy.times(straight(w, 0).plus(h[0].over(20)).minus(h[1].over(30))));
    Reference p2 =
        inertia(
            "p_" + along + "2",
            "force on the bar's end along " + along,
            heavy.times(straight(w, 1).plus(h[0].over(30)).minus(h[1].over(20))));
    Reference g1 =
        inertia(
            "g_" + along + "1",
            "what goes with the slope of the bar's end",
            heavy.times(
                w[0].over(20).plus(w[1].over(30)).plus(h[0].over(105)).minus(h[1].over(140))));
    Reference g2 =
        inertia(
            "g_" + along + "2",
            "what goes with the slope of the bar's end",
            heavy
                .times(w[0].over(30).plus(w[1].over(20)).plus(h[0].over(140)).minus(h[1].over(105)))
                .negated());
    work.add(p1.times(w[0]).plus(p2.times(w[1])).plus(g1.times(h[0])).plus(g2.times(h[1])));
    Expression n1 = length.times(near.times(g1).plus(far.times(g2)));
    Expression n2 = length.times(far.times(g1).plus(near.times(g2)));
    Expression first = s[0].times(n1).plus(s[1].times(n2));
    Expression second = s[1].times(n1).plus(s[2].times(n2));
    Reference j1 = moment(about, 0, sign > 0 ? first : first.negated());
    Reference j2 = moment(about, 1, sign > 0 ? second : second.negated());
    Expression couple = j1.plus(j2).over(length);
    force(along, 0, sign > 0 ? p1.plus(couple) : p1.minus(couple));
    force(along, 1, sign > 0 ? p2.minus(couple) : p2.plus(couple));
  }

  private Reference flexibility(String about, String mark, String by) {
    return p.input(
        "f_" + about + mark,
        "turn of an end about " + about + " " + by,
        Dimension.ROTATIONAL_FLEXIBILITY);
  }

  private Expression endShift(int end, int local) {
    Expression[] global = new Expression[3];
    for (int i = 0; i < 3; i++) {
      global[i] = moved.endShift(arms, end, i);
    }
    return SegmentAxes.along(axes[local], global);
  }

  private Reference shift(String along, int end, Expression formula) {
    return p.step(
        "w_" + along + (end + 1),
        "shift of the bar's end " + (end + 1) + " along " + along,
        Dimension.LENGTH,
        formula,
        MechanicsSources.STATICS);
  }

  private Reference inertia(String symbol, String words, Expression formula) {
    return p.step(symbol, words, Dimension.FORCE, formula, CONSISTENT_MASS);
  }

  private Reference force(String along, int end, Expression formula) {
    return p.step(
        "i_" + along + (end + 1),
        "force along " + along + " at end " + (end + 1),
        Dimension.FORCE,
        formula,
        MechanicsSources.STATICS);
  }

  private Reference moment(String about, int end, Expression formula) {
    return p.step(
        "j_" + about + (end + 1),
        "moment about " + about + " at end " + (end + 1),
        Dimension.MOMENT,
        formula,
        MechanicsSources.STATICS);
  }
}
