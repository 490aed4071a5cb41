package spanledger.overturning;

import java.util.List;
import spanledger.action.EquilibriumRule;
import spanledger.action.SelfWeight;
import spanledger.frame.Vector;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Procedure;

/**
 * Tipping about one line under one rule, with the variable loads where they are worst.
 *
 * @param edge the line
 * @param rule the rule
 * @param leading what leads, and where it stands, in words
 * @param variable the variable loads that tip
 * @param permanent the moments of the permanent loads
 * @param sway notional level force per weight; 0 if the rule has none
 */
public record TippingCase(
    TippingEdge edge,
    EquilibriumRule rule,
    String leading,
    List<VariableLoad> variable,
    PermanentMoments permanent,
    double sway) {

  /** How what holds and what tips are set against each other. */
  public static final Procedure BALANCE = EdgeBalance.PROCEDURE;

  /** How the mass of ballast is found. */
  public static final Procedure BALLAST = BallastNeed.PROCEDURE;

  public TippingCase {
    variable = List.copyOf(variable);
  }

  /** The moment of the variable loads with their factors, N·mm. */
  public double variableMoment() {
    return variable.stream().mapToDouble(load -> load.factored(edge)).sum();
  }

  /** What holds, with factors, N·mm. */
  public double stabilising() {
    return value("M_stb");
  }

  /** What tips, with factors, N·mm. */
  public double destabilising() {
    return value("M_dst");
  }

  /** What holds per what tips: at least 1 for a structure that stands. */
  public double factor() {
    return value("n");
  }

  /** What tips per what holds. */
  public double use() {
    return value("η");
  }

  private double value(String symbol) {
    CompiledProcedure balance = EdgeBalance.COMPILED;
    return balance
        .run(
            permanent.holding(),
            permanent.tipping(),
            permanent.byHeight(),
            sway,
            rule.holding().value(),
            rule.overturning().value(),
            variableMoment())[balance.slot(symbol)];
  }

  /**
   * The mass to add, shared evenly by some places, so that the structure just does not tip, kg; 0
   * if none is needed, -1 if none at these places helps.
   */
  public double ballast(List<Vector> places) {
    PermanentMoments perMass = PermanentMoments.NONE;
    for (LineWeight share : unitBallast(places)) {
      perMass = perMass.plus(share.about(edge));
    }
    CompiledProcedure need = BallastNeed.COMPILED;
    return need.run(
            stabilising(),
            destabilising(),
            rule.holding().value(),
            rule.overturning().value(),
            sway,
            perMass.holding(),
            perMass.tipping(),
            perMass.byHeight())[need.slot("m")];
  }

  /** A mass of 1 kg shared evenly by some places. */
  public static List<LineWeight> unitBallast(List<Vector> places) {
    return places.stream()
        .map(place -> LineWeight.at("ballast", place, SelfWeight.GRAVITY / places.size()))
        .toList();
  }
}
