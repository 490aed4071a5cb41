package spanledger.job.dxf;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** The length that a drawing's numbers stand for. */
final class DxfUnits {

  /** Codes of {@code $INSUNITS}, mm; from memory, confirm against the format's reference. */
  private static final Map<Integer, Double> CODES =
      Map.of(1, 25.4, 2, 304.8, 4, 1.0, 5, 10.0, 6, 1000.0, 14, 100.0);

  private static final String GIVE = "say the unit: --units mm, or \"unit\" beside the drawing";

  private DxfUnits() {}

  /** What a length of 1 means, mm; reports if neither drawing nor user says so, or they differ. */
  static OptionalDouble of(OptionalInt code, OptionalDouble given, DxfLog log) {
    boolean silent = code.isEmpty() || code.getAsInt() == 0;
    Double drawn = silent ? null : CODES.get(code.getAsInt());
    if (given.isPresent()) {
      if (drawn != null && drawn != given.getAsDouble()) {
        log.warning(
            0,
            "a drawing in another unit ($INSUNITS "
                + code.getAsInt()
                + ", one is "
                + drawn
                + " mm) than the one given",
            "one unit; the given one was taken",
            "check the sizes, and leave the unit out if the drawing is right");
      }
      return given;
    }
    if (drawn != null) {
      return OptionalDouble.of(drawn);
    }
    log.error(
        0,
        silent
            ? "a drawing without unit"
            : "a drawing in a unit that no section has ($INSUNITS " + code.getAsInt() + ")",
        "a drawing in mm, cm, m, in or ft",
        GIVE);
    return OptionalDouble.empty();
  }
}
