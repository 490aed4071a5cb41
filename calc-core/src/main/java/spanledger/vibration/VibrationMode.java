package spanledger.vibration;

import spanledger.stability.ModeShape;

/**
 * A natural vibration.
 *
 * @param frequency Hz
 * @param shape how it moves
 * @param shareX of the whole mass that moves along X together (effective modal mass), 0 to 1
 * @param shareY the same along Y
 * @param shareZ the same along Z
 * @param floorShare share of its kinetic energy that is in floor members moving up and down
 */
public record VibrationMode(
    double frequency,
    ModeShape shape,
    double shareX,
    double shareY,
    double shareZ,
    double floorShare) {}
