package spanledger.resistance.en1999;

import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.pi;
import static spanledger.procedure.Formulas.sin;

import spanledger.procedure.Expression;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * Compression and bending by elastic theory of second order: no rule of the standard, but kept
 * beside it, since the interaction formulas grant more than an elastic-plastic strut bears where
 * the moment is the same all along.
 *
 * <p>The bow is the one that the buckling curve stands for, so without moments the buckling
 * resistance itself comes out. A moment that is the same all along has 4/π times its size as the
 * first term of its sine series; that term grows by ν / (1 − ν).
 */
final class SecondOrder {

  /** What is left of a strut's stiffness is taken as no less, so that uses stay numbers. */
  private static final double LEAST = 0.001;

  private SecondOrder() {}

  /** Buckling about one axis. */
  record Axis(String name, Reference critical, Reference bow) {}

  /** What acts at the cut. */
  record Cut(
      Reference compression,
      Reference squash,
      Reference partial,
      Reference omega,
      Reference aboutY,
      Reference aboutZ,
      Reference placeY,
      Reference placeZ) {}

  static Axis inputs(Steps p, String axis) {
    return new Axis(
        axis,
        p.positive("N_cr_" + axis, "elastic critical force about " + axis, Dimension.FORCE),
        p.number("μ_" + axis, "bow that the buckling curve about " + axis + " stands for"));
  }

  /** Adds steps that end in η_second. */
  static void steps(Steps p, Cut cut, Reference open, Axis y, Axis z) {
    Reference n =
        p.step(
            "n",
            "compression per resistance without buckling",
            cut.compression().over(cut.omega().times(cut.squash())),
            Clause.SECOND_ORDER);
    Reference ny = share(p, cut, y);
    Reference nz = share(p, cut, z);
    Reference my = grown(p, "y", cut.aboutY(), ny, cut.placeY());
    Reference mz = grown(p, "z", cut.aboutZ(), nz, cut.placeZ());
    Reference bowY = bow(p, y, n, ny, cut.placeY());
    Reference bowZ = bow(p, z, n, nz, cut.placeZ());
    p.step(
        "η_second",
        "section under the forces of second order, bow about the worse axis",
        n.plus(
            choose(
                greater(open, number(0.5)),
                max(bowY, bowZ).plus(my).plus(mz),
                max(both(my.plus(bowY), mz), both(my, mz.plus(bowZ))))),
        Clause.SECOND_ORDER);
  }

  /** As the standard's 1.7 and 0.6, but one moment alone comes out as it is. */
  private static Expression both(Expression aboutY, Expression aboutZ) {
    return aboutY.pow(number(1.7)).plus(aboutZ.pow(number(1.7))).pow(number(1).over(number(1.7)));
  }

  private static Reference share(Steps p, Cut cut, Axis axis) {
    return p.step(
        "ν_" + axis.name(),
        "compression per critical force about " + axis.name(),
        cut.compression().times(cut.partial()).over(axis.critical()),
        Clause.SECOND_ORDER);
  }

  private static Expression left(Reference share) {
    return max(number(LEAST), number(1).minus(share));
  }

  private static Reference grown(
      Steps p, String axis, Reference moment, Reference share, Reference place) {
    return p.step(
        "m_" + axis + "2",
        "moment about " + axis + " of second order per resistance",
        moment.times(
            number(1)
                .plus(
                    number(4)
                        .over(pi())
                        .times(share.over(left(share)))
                        .times(sin(pi().times(place))))),
        Clause.SECOND_ORDER);
  }

  private static Reference bow(Steps p, Axis axis, Reference n, Reference share, Reference place) {
    return p.step(
        "m_" + axis.name() + "0",
        "moment of the bow about " + axis.name() + " per resistance",
        axis.bow().times(n).over(left(share)).times(sin(pi().times(place))),
        Clause.SECOND_ORDER);
  }
}
