package spanledger.vibration;

import spanledger.stability.ModeShape;

/**
 * A natural vibration.
 *
 * @param eigenvalue λ = ω², N/(mm·kg)
 * @param frequency Hz
 * @param shape how the nodes of the divided frame move
 * @param shareX of the whole mass that moves along X together (effective modal mass), 0 to 1
 * @param shareY the same along Y
 * @param shareZ the same along Z
 * @param floorShare share of its kinetic energy that is in floor members moving up and down
 */
public record VibrationMode(
    double eigenvalue,
    double frequency,
    ModeShape shape,
    double shareX,
    double shareY,
    double shareZ,
    double floorShare) {

  static VibrationMode of(double eigenvalue, ModeShape shape, MassMatrix mass) {
    double[] figures = mass.figures(eigenvalue, shape.movements());
    return new VibrationMode(
        eigenvalue,
        figures[ModeFigures.slot("f")],
        shape,
        figures[ModeFigures.slot("m_X")],
        figures[ModeFigures.slot("m_Y")],
        figures[ModeFigures.slot("m_Z")],
        figures[ModeFigures.slot("e_floor")]);
  }
}
