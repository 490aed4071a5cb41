package spanledger.resistance.en1999;

import static spanledger.procedure.Formulas.abs;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.less;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.pi;
import static spanledger.procedure.Formulas.sin;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * Buckling of the member, judged at a cut: each mode alone, then with moments.
 *
 * <p>y is the stronger axis. The critical cut of a beam-column need not be the middle: near the
 * ends of a buckling length the deflection of second order is small, which ω_x, ω_xLT follow. The
 * least of all modes but bending about y takes the place of buckling about z.
 */
final class MemberAtCut {

  static final Procedure PROCEDURE = define();

  private MemberAtCut() {}

  private static Procedure define() {
    Steps p = new Steps("member-at-cut", "Member buckling at a cut, EN 1999-1-1");
    Reference n = p.any("N", "axial force, tension positive", Dimension.FORCE);
    Reference my = p.any("M_y", "bending moment about the stronger axis", Dimension.MOMENT);
    Reference mz = p.any("M_z", "bending moment about the weaker axis", Dimension.MOMENT);
    Reference placeY = part(p, "ξ_y", "place of the cut in the buckling length about y");
    Reference placeZ = part(p, "ξ_z", "place of the cut in the buckling length about z");
    Reference placeL = part(p, "ξ_LT", "place of the cut between lateral restraints");
    Reference omega = part(p, "ω_0", "part of the resistances that is there");
    Reference ny = p.positive("N_b_y", "buckling resistance about y", Dimension.FORCE);
    Reference nz = p.positive("N_b_z", "buckling resistance about z", Dimension.FORCE);
    Reference nt = p.positive("N_b_T", "torsional-flexural buckling resistance", Dimension.FORCE);
    Reference chiY = p.factor("χ_y", "reduction about y");
    Reference chiZ = p.factor("χ_zT", "least reduction about z and of twisting");
    Reference shiftY = p.notNegative("e_y", "shift of the centroid along y", Dimension.LENGTH);
    Reference shiftZ = p.notNegative("e_z", "shift of the centroid along z", Dimension.LENGTH);
    Reference yUp = p.positive("M_y_Rd_pos", "moment resistance, M_y > 0", Dimension.MOMENT);
    Reference yDown = p.positive("M_y_Rd_neg", "moment resistance, M_y < 0", Dimension.MOMENT);
    Reference zUp = p.positive("M_z_Rd_pos", "moment resistance, M_z > 0", Dimension.MOMENT);
    Reference zDown = p.positive("M_z_Rd_neg", "moment resistance, M_z < 0", Dimension.MOMENT);
    Reference ltUp = part(p, "χ_LT_pos", "lateral-torsional reduction, M_y > 0");
    Reference ltDown = part(p, "χ_LT_neg", "lateral-torsional reduction, M_y < 0");
    Reference open = p.yes("o", "open");
    Reference exponent = p.factor("e_c", "exponent of buckling and of the moment about z");
    Reference squash =
        p.positive("N_Rd", "resistance without buckling of the member", Dimension.FORCE);
    Reference partial = p.yieldFactor();
    SecondOrder.Axis secondY = SecondOrder.inputs(p, "y");
    SecondOrder.Axis secondZ = SecondOrder.inputs(p, "z");

    Expression noForce = Steps.zero(Dimension.FORCE);
    Expression noMoment = Steps.zero(Dimension.MOMENT);
    Reference compression =
        p.step("N_c", "compression", max(n.negated(), noForce), Clause.of("6.3.1.1"));
    Reference aboutY =
        p.step(
            "m_y",
            "moment about y per resistance",
            abs(my)
                .plus(compression.times(shiftZ))
                .over(omega.times(choose(less(my, noMoment), yDown, yUp))),
            Clause.of("6.3.3.1; with the shift of the centroid"));
    Reference aboutZ =
        p.step(
            "m_z",
            "moment about z per resistance",
            abs(mz)
                .plus(compression.times(shiftY))
                .over(omega.times(choose(less(mz, noMoment), zDown, zUp))),
            Clause.of("6.3.3.1; with the shift of the centroid"));
    Reference lateral =
        p.step(
            "χ_LT",
            "lateral-torsional reduction",
            choose(less(my, noMoment), ltDown, ltUp),
            Clause.of("6.3.2.1"));
    Reference alongY = along(p, "ω_xy", "ω_x / ω_0 about y", chiY, placeY, "6.3.3.3, eq. 6.65");
    Reference alongZ = along(p, "ω_xz", "ω_x / ω_0 about z", chiZ, placeZ, "6.3.3.3, eq. 6.65");
    Reference alongL = along(p, "ω_xLT", "ω_xLT / ω_0", lateral, placeL, "6.3.3.3, eq. 6.66");
    Reference forceY = here(p, "n_y", "about y", compression, ny, omega, alongY);
    Reference forceZ = here(p, "n_z", "about z", compression, nz, omega, alongZ);
    Reference forceT = here(p, "n_T", "by twisting", compression, nt, omega, alongZ);
    alone(p, "η_by", "flexural buckling about y", compression, ny, forceY, "6.3.1.1, eq. 6.48");
    alone(p, "η_bz", "flexural buckling about z", compression, nz, forceZ, "6.3.1.1, eq. 6.48");
    alone(p, "η_bT", "torsional-flexural buckling", compression, nt, forceT, "6.3.1.4");
    Reference bent =
        p.step(
            "m_LT",
            "moment about y per what lateral-torsional buckling leaves at this cut",
            aboutY.over(lateral.times(alongL)),
            Clause.of("6.3.3.2"));
    p.step(
        "η_LT",
        "lateral-torsional buckling",
        max(aboutY.times(omega).over(lateral), bent),
        Clause.of("6.3.2.1, eq. 6.54; welds and holes by 6.3.3.3"));
    Reference bendsY =
        p.step(
            "η_4",
            "open: buckling about y with its moment",
            forceY.pow(exponent).plus(aboutY),
            Clause.of("6.3.3.1, eq. 6.59"));
    Reference bendsZ =
        p.step(
            "η_5",
            "open: buckling in the other modes with both moments",
            max(forceZ, forceT).pow(exponent).plus(bent).plus(aboutZ.pow(exponent)),
            Clause.of("6.3.3.2, eq. 6.63; without lateral-torsional buckling eq. 6.60"));
    Reference closed =
        p.step(
            "η_6",
            "hollow or solid",
            max(forceY, forceZ, forceT).pow(exponent).plus(Interaction.ofMoments(bent, aboutZ)),
            Clause.of("6.3.3.1, eq. 6.62; M_y with lateral-torsional buckling besides"));
    SecondOrder.steps(
        p,
        new SecondOrder.Cut(compression, squash, partial, omega, bent, aboutZ, placeY, placeZ),
        open,
        secondY,
        secondZ);
    p.step(
        "η_member",
        "buckling with moments",
        choose(greater(open, number(0.5)), max(bendsY, bendsZ), closed),
        Clause.of("6.3.3"));
    return p.build();
  }

  private static Reference part(Steps p, String symbol, String words) {
    return p.input(symbol, words, Dimension.NONE, Domain.FRACTION);
  }

  /** Buckling at this cut, welds and holes there included. */
  private static Reference here(
      Steps p,
      String symbol,
      String words,
      Reference compression,
      Reference resistance,
      Reference omega,
      Reference along) {
    return p.step(
        symbol,
        "buckling " + words + " at this cut",
        compression.over(omega.times(along).times(resistance)),
        Clause.of("6.3.3.1, 6.3.3.3"));
  }

  /** The middle of the buckling length, wherever the cut is, and the cut with its weak place. */
  private static void alone(
      Steps p,
      String symbol,
      String words,
      Reference compression,
      Reference resistance,
      Reference here,
      String clause) {
    p.step(symbol, words, max(compression.over(resistance), here), Clause.of(clause));
  }

  private static Reference along(
      Steps p, String symbol, String words, Reference chi, Reference place, String clause) {
    return p.step(
        symbol,
        words,
        number(1).over(chi.plus(number(1).minus(chi).times(sin(pi().times(place))))),
        Clause.of(clause));
  }
}
