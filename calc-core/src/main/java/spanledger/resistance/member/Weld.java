package spanledger.resistance.member;

import java.util.OptionalDouble;
import spanledger.provenance.Source;

/** A weld declared on a member; the metal beside it is softer. */
public sealed interface Weld permits Weld.Across, Weld.Along, Weld.WithoutPlace {

  /** What the weld is called in the job. */
  String name();

  /** How it is made, which decides how far the heat reaches. */
  enum Method {
    MIG,
    TIG
  }

  /**
   * Across the member, for example of a cleat or base plate; the whole section counts as softened
   * there.
   *
   * @param place from the member's start, mm
   * @param reach how far the softened metal reaches to either side, mm; by process and wall
   *     thickness if not given
   */
  record Across(String name, double place, Method method, OptionalDouble reach, Source source)
      implements Weld {}

  /**
   * Along the whole member in one wall.
   *
   * @param plate the wall, by the name it has in {@link MemberSection#walls}
   * @param fromStart from the start of the wall's midline to the middle of the weld, mm
   * @param reach how far the softened metal reaches to either side along the wall, mm; by process
   *     and wall thickness if not given
   */
  record Along(
      String name,
      String plate,
      double fromStart,
      Method method,
      OptionalDouble reach,
      Source source)
      implements Weld {}

  /** Declared without saying where: makes the member {@link NotCheckable}. */
  record WithoutPlace(String name) implements Weld {}
}
