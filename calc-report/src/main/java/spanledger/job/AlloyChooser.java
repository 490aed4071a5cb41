package spanledger.job;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import spanledger.job.reading.Reading;
import spanledger.job.source.Located;
import spanledger.job.source.Quoted;
import spanledger.material.Alloy;
import spanledger.material.AlloyTable;
import spanledger.material.ProductForm;
import spanledger.section.OutlineShape;
import spanledger.section.PropertyRow;
import spanledger.section.RectangularHollow;
import spanledger.section.RoundHollow;
import spanledger.section.Section;
import spanledger.section.Shape;
import spanledger.section.SolidRectangle;
import spanledger.section.SolidRound;

/**
 * Finds the row of the alloy table that holds for a section. Reports each pair that has none once.
 */
final class AlloyChooser {

  private record Pair(MaterialChoice material, Section section) {}

  private final Reading reading;
  private final AlloyTable table;
  private final Map<Pair, Optional<Alloy>> chosen = new HashMap<>();

  AlloyChooser(Reading reading, AlloyTable table) {
    this.reading = reading;
    this.table = table;
  }

  /**
   * The alloy of a member.
   *
   * @param reference where the member names its material
   */
  Optional<Alloy> alloy(MaterialChoice material, Section section, Located reference) {
    return chosen.computeIfAbsent(
        new Pair(material, section), pair -> choose(material, section, reference));
  }

  /**
   * The alloy of a part of a joint, at one thickness; of an open profile unless the material says
   * its form.
   *
   * @param thickness mm
   * @param reference where the part names its material
   */
  Optional<Alloy> ofPart(MaterialChoice material, double thickness, Located reference) {
    if (material instanceof MaterialChoice.Own own) {
      return Optional.of(own.alloy());
    }
    MaterialChoice.Published published = (MaterialChoice.Published) material;
    try {
      return Optional.of(
          table.select(
              published.designation(),
              published.form().orElse(ProductForm.OPEN_PROFILE),
              thickness,
              thickness));
    } catch (IllegalArgumentException e) {
      reading.error(
          reference,
          "a material without strengths for this part: " + e.getMessage(),
          "a form and a thickness for which strengths are published",
          "choose another alloy, say its form, or give the strengths in the material");
      return Optional.empty();
    }
  }

  private Optional<Alloy> choose(MaterialChoice material, Section section, Located reference) {
    if (material instanceof MaterialChoice.Own own) {
      return Optional.of(own.alloy());
    }
    MaterialChoice.Published published = (MaterialChoice.Published) material;
    Optional<ProductForm> form = published.form().or(() -> usualForm(section.shape()));
    if (form.isEmpty()) {
      reading.error(
          reference,
          reference.words()
              + ", which leaves the product form of section "
              + Quoted.text(section.name())
              + " open",
          "\"form\" in the material, because a row of properties does not tell its form",
          "add \"form\" to the material");
      return Optional.empty();
    }
    try {
      return Optional.of(
          table.select(
              published.designation(),
              form.get(),
              section.shape().thinnestWall(),
              section.shape().thickestWall()));
    } catch (IllegalArgumentException e) {
      reading.error(
          reference,
          "a material without strengths for section "
              + Quoted.text(section.name())
              + ": "
              + e.getMessage(),
          "a form and walls for which strengths are published",
          "choose another alloy or section, or give the strengths in the material");
      return Optional.empty();
    }
  }

  private static Optional<ProductForm> usualForm(Shape shape) {
    if (shape instanceof RoundHollow) {
      return Optional.of(ProductForm.TUBE);
    }
    if (shape instanceof RectangularHollow) {
      return Optional.of(ProductForm.HOLLOW_PROFILE);
    }
    if (shape instanceof SolidRectangle || shape instanceof SolidRound) {
      return Optional.of(ProductForm.ROD_OR_BAR);
    }
    if (shape instanceof OutlineShape outline && outline.isHollow()) {
      return Optional.of(outline.isRoundTube() ? ProductForm.TUBE : ProductForm.HOLLOW_PROFILE);
    }
    return shape instanceof PropertyRow ? Optional.empty() : Optional.of(ProductForm.OPEN_PROFILE);
  }
}
