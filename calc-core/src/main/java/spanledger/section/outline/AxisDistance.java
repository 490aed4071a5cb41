package spanledger.section.outline;

import static spanledger.procedure.Formulas.cos;
import static spanledger.procedure.Formulas.sin;

import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** How far a point lies to the left of an axis through the centroid; the positive side. */
public final class AxisDistance {

  static final Source LINE = Source.derived("Distance of a point from a line");

  /** Inputs y, z, y_c, z_c, α; step v. */
  public static final Procedure PROCEDURE = procedure();

  private AxisDistance() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("axis-distance", "Distance from an axis");
    Reference y = p.input("y", "y of the point", Dimension.LENGTH);
    Reference z = p.input("z", "z of the point", Dimension.LENGTH);
    Axis axis = Axis.given(p);
    p.step("v", "distance to the left of the axis", Dimension.LENGTH, axis.distance(y, z), LINE);
    return p.build();
  }

  /** An axis as inputs of a procedure. */
  record Axis(Reference y, Reference z, Reference angle) {

    static Axis given(Procedure.Builder p) {
      return new Axis(
          p.input("y_c", "y of the centroid", Dimension.LENGTH),
          p.input("z_c", "z of the centroid", Dimension.LENGTH),
          p.input("α", "angle of the axis, to the left of y", Dimension.NONE));
    }

    /** Of a point. */
    Expression distance(Reference pointY, Reference pointZ) {
      return across(pointY.minus(y), pointZ.minus(z));
    }

    /** Of a vector. */
    Expression across(Expression alongY, Expression alongZ) {
      return alongZ.times(cos(angle)).minus(alongY.times(sin(angle)));
    }
  }
}
