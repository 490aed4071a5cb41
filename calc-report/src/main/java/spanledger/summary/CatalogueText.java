package spanledger.summary;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import spanledger.section.CatalogueSection;
import spanledger.section.SectionProperties;
import spanledger.section.outline.Outline;
import spanledger.section.outline.PlaneProperties;
import spanledger.section.warping.FieldProperties;
import spanledger.section.warping.FieldSolver;

/** Catalogue sections, and what is published of them beside what follows from their sizes. */
public final class CatalogueText {

  private static final int NAME = 20;
  private static final int KEY = 20;
  private static final int NUMBER = 14;

  private CatalogueText() {}

  /** One line for each section. */
  public static String list(Collection<CatalogueSection> sections) {
    StringBuilder text = new StringBuilder();
    for (CatalogueSection section : sections) {
      text.append(padded(section.name(), NAME))
          .append(section.source().citation())
          .append(" (")
          .append(section.source().confidence().words())
          .append(")\n");
    }
    return text.append("A job names one by {\"catalogue\": \"NAME\"}.\n").toString();
  }

  /** Published and worked-out properties of one section side by side, in mm. */
  public static String compared(CatalogueSection section) {
    Map<String, Double> worked = workedOut(section);
    StringBuilder text = new StringBuilder(section.name()).append('\n');
    text.append(section.source().citation())
        .append(" (")
        .append(section.source().confidence().words())
        .append(")\n");
    if (!section.note().isEmpty()) {
      text.append(section.note()).append('\n');
    }
    text.append(padded("in mm", KEY))
        .append(right("published"))
        .append(right("worked out"))
        .append(right("difference"))
        .append('\n');
    worked.forEach(
        (key, value) -> {
          @Nullable Double published = section.published().get(key);
          text.append(padded(key, KEY))
              .append(right(published == null ? "-" : digits(published)))
              .append(right(digits(value)))
              .append(right(published == null ? "" : percent(value / published - 1)))
              .append('\n');
        });
    text.append(
        "Jobs use what is worked out. Tables round, leave radii unsaid, and take some formulas of thin"
            + " walls: docs/theory/section.md.\n");
    return text.toString();
  }

  /** The same as JSON, ending in a line break. */
  public static String json(Collection<CatalogueSection> sections, boolean withValues) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("format", "spanledger-catalogue");
    root.put("formatVersion", 1);
    ArrayNode list = root.putArray("sections");
    for (CatalogueSection section : sections) {
      ObjectNode node = list.addObject();
      node.put("name", section.name());
      node.put("source", section.source().citation());
      node.put("confidence", section.source().confidence().words());
      node.put("note", section.note());
      ObjectNode published = node.putObject("published");
      section.published().forEach(published::put);
      if (withValues) {
        ObjectNode worked = node.putObject("workedOut");
        workedOut(section).forEach(worked::put);
      }
    }
    try {
      return new ObjectMapper()
              .enable(SerializationFeature.INDENT_OUTPUT)
              .writeValueAsString(root)
              .replace("\r\n", "\n")
          + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("A tree of plain nodes can always be written.", e);
    }
  }

  /** Properties by their keys in data files, mm. */
  static Map<String, Double> workedOut(CatalogueSection section) {
    return section.form() instanceof CatalogueSection.ByFormula formula
        ? byFormula(SectionProperties.of(formula.shape()))
        : byOutline(((CatalogueSection.ByOutline) section.form()).outline());
  }

  private static Map<String, Double> byFormula(SectionProperties p) {
    Map<String, Double> values = new LinkedHashMap<>();
    values.put("area", p.area());
    values.put("secondMomentY", p.secondMomentY());
    values.put("elasticModulusY", p.elasticModulusY());
    values.put("plasticModulusY", p.plasticModulusY());
    values.put("radiusOfGyrationY", Math.sqrt(p.secondMomentY() / p.area()));
    values.put("secondMomentZ", p.secondMomentZ());
    values.put("elasticModulusZ", p.elasticModulusZ());
    values.put("plasticModulusZ", p.plasticModulusZ());
    values.put("radiusOfGyrationZ", Math.sqrt(p.secondMomentZ() / p.area()));
    values.put("torsionConstant", p.torsionConstant());
    return values;
  }

  private static Map<String, Double> byOutline(Outline outline) {
    PlaneProperties plane = PlaneProperties.of(outline);
    FieldProperties field = FieldSolver.standard().solve(outline);
    Map<String, Double> values = new LinkedHashMap<>();
    values.put("area", plane.area());
    values.put("secondMomentY", plane.momentY());
    values.put("elasticModulusY", plane.y().elasticModulus());
    values.put("plasticModulusY", plane.y().plasticModulus());
    values.put("radiusOfGyrationY", Math.sqrt(plane.momentY() / plane.area()));
    values.put("secondMomentZ", plane.momentZ());
    values.put("elasticModulusZ", plane.z().elasticModulus());
    values.put("plasticModulusZ", plane.z().plasticModulus());
    values.put("radiusOfGyrationZ", Math.sqrt(plane.momentZ() / plane.area()));
    values.put("centroid", plane.centroid().y());
    double centre = field.torsion().shearCentre().distance(plane.centroid());
    values.put("shearCentre", centre);
    values.put("torsionConstant", field.torsion().torsionConstant());
    values.put("warpingConstant", field.torsion().warpingConstant());
    values.put(
        "polarRadius",
        Math.sqrt((plane.momentY() + plane.momentZ()) / plane.area() + centre * centre));
    return values;
  }

  private static String padded(String text, int width) {
    return text + " ".repeat(Math.max(1, width - text.length()));
  }

  private static String right(String text) {
    return " ".repeat(Math.max(1, NUMBER - text.length())) + text;
  }

  private static String digits(double value) {
    BigDecimal rounded = new BigDecimal(value, new MathContext(5)).stripTrailingZeros();
    return Math.abs(value) >= 1e7 ? rounded.toString() : rounded.toPlainString();
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%+.1f %%", 100 * share);
  }
}
