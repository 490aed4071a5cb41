package spanledger.overturning;

import spanledger.action.Figure;

/**
 * A variable load that takes part in tipping or sliding.
 *
 * @param acting the load
 * @param factor its factor
 * @param sway notional level force per weight that acts with it
 */
public record VariableLoad(Acting acting, Figure factor, double sway) {

  /** The moment with which it tips, without its factor, N·mm. */
  public double moment(TippingEdge edge) {
    return acting.tipping(edge, sway);
  }

  /** The moment with which it tips, with its factor, N·mm. */
  double factored(TippingEdge edge) {
    return factor.value() * moment(edge);
  }
}
