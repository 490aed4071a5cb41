package spanledger.section;

import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Procedure;

/**
 * The outline of a cross-section, or a row of published properties in its place. All corners of the
 * shapes with sizes are sharp.
 *
 * <p>Root fillets are left out, which is on the safe side by up to 4 % of area and second moment.
 * Outer corners are not rounded either, which is not on the safe side: where an extrusion has large
 * outer radii, give its published properties as a {@link PropertyRow}.
 *
 * <p>An {@link OutlineShape} has its fillets and outer radii as drawn.
 *
 * <p>A load off the shear centre twists a {@link Channel} or an {@link Angle}; that torque is not
 * part of these properties.
 */
public sealed interface Shape
    permits RectangularHollow,
        RoundHollow,
        SolidRectangle,
        SolidRound,
        Channel,
        Angle,
        ISection,
        OutlineShape,
        PropertyRow {

  /** What the shape is called, for example {@code rectangular hollow section}. */
  String kind();

  /** The calculation of its properties, ready to run; one and the same for all shapes of a kind. */
  CompiledProcedure compiled();

  /**
   * The calculation of its properties; it has every {@link SectionSymbol} as a step or an input.
   */
  default Procedure procedure() {
    return compiled().procedure();
  }

  /** The inputs of the calculation, in its order, as a new array. */
  double[] inputs();

  /** The thinnest wall, mm; with {@link #thickestWall} it decides the row of an alloy table. */
  double thinnestWall();

  /** The thickest wall, mm. */
  double thickestWall();

  /** Whether the slenderness of every wall is known, so that local buckling can be judged. */
  default boolean platesKnown() {
    return true;
  }
}
