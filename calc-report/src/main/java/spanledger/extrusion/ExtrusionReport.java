package spanledger.extrusion;

import java.util.Optional;
import spanledger.material.Alloy;
import spanledger.provenance.Source;
import spanledger.section.Extrusion;
import spanledger.section.OutlineShape;
import spanledger.section.SectionStudy;

/**
 * What is reported on one extrusion.
 *
 * @param extrusion the section as drawn
 * @param origin the file or table that gives it, as the user named it
 * @param sha256 checksum of that file, in hexadecimal digits; empty if it comes from a table
 * @param study all that is known of it
 * @param shape the shape for analysis; missing of several pieces
 * @param alloy for mass and strength, if the user named one
 */
public record ExtrusionReport(
    Extrusion extrusion,
    String origin,
    String sha256,
    SectionStudy study,
    Optional<OutlineShape> shape,
    Optional<Alloy> alloy) {

  /** The report on one piece. */
  public static ExtrusionReport of(
      Extrusion extrusion,
      String origin,
      String sha256,
      OutlineShape shape,
      Optional<Alloy> alloy) {
    return new ExtrusionReport(
        extrusion, origin, sha256, SectionStudy.of(shape), Optional.of(shape), alloy);
  }

  /** What the extrusion is called. */
  public String name() {
    return extrusion.name();
  }

  /** Where the outline comes from, for the workbook. */
  public Source source() {
    return Source.declared(extrusion.source());
  }

  /** Mass per length, kg/m, if an alloy is named. */
  public Optional<Double> massPerMetre() {
    return alloy.map(a -> study.plane().area() * a.density() * 1000);
  }
}
