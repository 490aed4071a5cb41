package spanledger.section;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import spanledger.provenance.Source;
import spanledger.section.outline.Outline;

/**
 * A section of a catalogue: its sizes, and the properties that are published with them.
 *
 * <p>Calculations use what follows from the sizes; the published properties stand beside them,
 * since tables round and some of their formulas hold for thin walls only.
 *
 * @param name as the catalogue calls it
 * @param form what follows from its sizes
 * @param published properties as published, by their keys in the data file, in mm
 * @param source where it is published
 * @param note anything a reader should know
 */
public record CatalogueSection(
    String name, Form form, Map<String, Double> published, Source source, String note) {

  public CatalogueSection {
    published = Collections.unmodifiableMap(new LinkedHashMap<>(published));
  }

  /** What the sizes give. */
  public sealed interface Form permits ByFormula, ByOutline {}

  /**
   * A shape with sharp corners, whose properties follow by formula.
   *
   * @param shape the shape
   */
  public record ByFormula(Shape shape) implements Form {}

  /**
   * An outline with its fillets.
   *
   * @param outline the outline, mm
   */
  public record ByOutline(Outline outline) implements Form {}
}
