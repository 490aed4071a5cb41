package spanledger.overturning;

import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** The inputs that say where a tipping line is, and the arms of a place about it. */
final class EdgeInputs {

  static final Source ARM = Source.derived("Distance from the tipping line");

  private final Reference x;
  private final Reference y;
  private final Reference z;
  private final Reference outX;
  private final Reference outY;
  private final Reference rise;

  EdgeInputs(Procedure.Builder p) {
    x = p.input("X_A", "first foot of the tipping line along X", Dimension.LENGTH);
    y = p.input("Y_A", "first foot of the tipping line along Y", Dimension.LENGTH);
    z = p.input("Z_A", "first foot of the tipping line along Z", Dimension.LENGTH);
    outX = p.input("n_X", "outward along X", Dimension.NONE);
    outY = p.input("n_Y", "outward along Y", Dimension.NONE);
    rise = p.input("t", "rise of the tipping line per length in plan", Dimension.NONE);
  }

  Expression beyond(Expression placeX, Expression placeY) {
    return placeX.minus(x).times(outX).plus(placeY.minus(y).times(outY));
  }

  Expression above(Expression placeX, Expression placeY, Expression placeZ) {
    Expression along = placeY.minus(y).times(outX).minus(placeX.minus(x).times(outY));
    return placeZ.minus(z).minus(rise.times(along));
  }

  Expression outward(Expression alongX, Expression alongY) {
    return alongX.times(outX).plus(alongY.times(outY));
  }

  /** Along the line in plan, first foot to second. */
  Expression lengthways(Expression alongX, Expression alongY) {
    return alongY.times(outX).minus(alongX.times(outY));
  }

  Reference rise() {
    return rise;
  }

  /** The values of the inputs, put where a procedure's inputs begin. */
  static double[] of(TippingEdge edge, double... more) {
    double[] values = new double[6 + more.length];
    values[0] = edge.first().place().x();
    values[1] = edge.first().place().y();
    values[2] = edge.first().place().z();
    values[3] = edge.value("n_X");
    values[4] = edge.value("n_Y");
    values[5] = edge.rise();
    System.arraycopy(more, 0, values, 6, more.length);
    return values;
  }
}
