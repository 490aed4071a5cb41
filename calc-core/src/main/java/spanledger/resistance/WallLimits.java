package spanledger.resistance;

import spanledger.provenance.Source;

/**
 * The limits between class 3 and class 4 walls, per ε.
 *
 * @param inner β3 of inner walls
 * @param outstand β3 of outstanding walls
 */
public record WallLimits(double inner, double outstand) {

  /** Where the limits come from. */
  public static final Source SOURCE =
      Source.fromMemory("EN 1999-1-1:2007", "Table 6.2, parts without welds");

  /** For buckling class A alloys. */
  public static final WallLimits CLASS_A = new WallLimits(22, 6);

  /** For buckling class B alloys. */
  public static final WallLimits CLASS_B = new WallLimits(18, 5);
}
