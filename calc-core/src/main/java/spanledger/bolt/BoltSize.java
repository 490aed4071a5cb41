package spanledger.bolt;

import spanledger.provenance.Source;

/**
 * The sizes of a hexagon bolt, its nut, its washer and its holes.
 *
 * @param name for example {@code M8}
 * @param diameter of the thread, mm
 * @param pitch of the thread, mm
 * @param stressArea tensile stress area, mm²
 * @param acrossFlats width of head and nut across flats, mm
 * @param headHeight mm
 * @param nutHeight mm
 * @param hole diameter of a clearance hole of medium fit, mm
 * @param closeHole diameter of a clearance hole of close fit, mm
 * @param washerDiameter outer diameter of a plain washer, mm
 * @param washerThickness mm
 * @param areaSource of the stress area
 * @param source of the other sizes
 * @param note anything a reader should know
 */
public record BoltSize(
    String name,
    double diameter,
    double pitch,
    double stressArea,
    double acrossFlats,
    double headHeight,
    double nutHeight,
    double hole,
    double closeHole,
    double washerDiameter,
    double washerThickness,
    Source areaSource,
    Source source,
    String note) {

  /**
   * @throws IllegalArgumentException if a size is not above zero, or sizes contradict each other
   */
  public BoltSize {
    boolean sound =
        pitch > 0
            && pitch < diameter
            && stressArea > 0
            && stressArea < Math.PI * diameter * diameter / 4
            && acrossFlats > diameter
            && headHeight > 0
            && nutHeight > 0
            && closeHole >= diameter
            && hole >= closeHole
            && washerDiameter > hole
            && washerThickness > 0;
    if (!sound) {
      throw new IllegalArgumentException(
          "The sizes of bolt "
              + name
              + " contradict each other: the pitch and the stress area must be below those of a bar of"
              + " the thread's diameter, the head, the holes and the washer above it.");
    }
  }

  /** Area of the shank without thread, mm². */
  public double shankArea() {
    return Math.PI * diameter * diameter / 4;
  }
}
