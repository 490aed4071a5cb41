package spanledger.tables;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import spanledger.action.ActionCategory;
import spanledger.action.CombinationSet;
import spanledger.action.CombinationTemplate;
import spanledger.action.EquilibriumRule;
import spanledger.action.Figure;
import spanledger.action.LeadingAction;
import spanledger.action.LimitState;
import spanledger.quantity.Dimension;

/** Reads combination rules from data files. */
public final class CombinationTables {

  private static final Map<String, LimitState> LIMIT_STATES =
      Stream.of(LimitState.values())
          .collect(Collectors.toUnmodifiableMap(LimitState::words, s -> s));

  private static final Map<String, LeadingAction> LEADING =
      Map.of(
          "none", LeadingAction.NONE,
          "floor", LeadingAction.FLOOR,
          "guardrail", LeadingAction.GUARDRAIL,
          "wind", LeadingAction.WIND);

  /** Notional level forces take the factor of the load that they belong to. */
  private static final Map<String, ActionCategory> CATEGORIES =
      Stream.of(ActionCategory.values())
          .filter(category -> category != ActionCategory.NOTIONAL)
          .collect(Collectors.toUnmodifiableMap(ActionCategory::words, c -> c));

  private static final Map<LeadingAction, ActionCategory> CATEGORY_OF_LEADING =
      Map.of(
          LeadingAction.NONE, ActionCategory.PERMANENT,
          LeadingAction.FLOOR, ActionCategory.IMPOSED,
          LeadingAction.GUARDRAIL, ActionCategory.GUARDRAIL,
          LeadingAction.WIND, ActionCategory.WIND);

  private CombinationTables() {}

  /** All combination sets that come with this module, in the order of its files. */
  public static List<CombinationSet> sets() {
    return TableFile.shippedIn("combinations").stream().map(CombinationTables::read).toList();
  }

  /**
   * A combination set that comes with this module.
   *
   * @throws IllegalArgumentException if there is none of that id; the message names those there are
   */
  public static CombinationSet set(String id) {
    Map<String, CombinationSet> sets = new LinkedHashMap<>();
    sets().forEach(set -> sets.put(set.id(), set));
    CombinationSet found = sets.get(id);
    if (found == null) {
      throw new IllegalArgumentException(
          "There is no combination set \"" + id + "\"." + TableObject.choices(id, sets.keySet()));
    }
    return found;
  }

  /**
   * Reads a combination set.
   *
   * @param name what messages call the file
   * @param content the file, read to its end but not closed
   * @throws TableFormatException if it is not a combination set; the message names the row
   */
  public static CombinationSet read(String name, InputStream content) {
    return read(TableFile.read(name, content));
  }

  private static CombinationSet read(TableObject file) {
    file.allowOnly("id", "title", "format", "factors", "templates", "equilibrium");
    Map<String, Figure> factors = new TreeMap<>();
    for (TableObject row : file.rows("factors", "id")) {
      row.allowOnly("id", "words", "value", "work", "place", "confidence", "note");
      Figure factor = FigureRow.read(row, Dimension.NONE);
      if (factors.put(factor.id(), factor) != null) {
        throw row.fault("this factor is given twice.");
      }
    }
    List<CombinationTemplate> templates = new ArrayList<>();
    Set<String> names = new LinkedHashSet<>();
    for (TableObject row : file.rows("templates", "name")) {
      CombinationTemplate template = template(row, factors);
      if (!names.add(template.name())) {
        throw row.fault("this name is given twice.");
      }
      templates.add(template);
    }
    return new CombinationSet(
        file.text("id"),
        file.text("title"),
        templates,
        equilibrium(file, factors),
        file.optionalText("format"));
  }

  private static List<EquilibriumRule> equilibrium(TableObject file, Map<String, Figure> known) {
    if (!file.has("equilibrium")) {
      return List.of();
    }
    List<EquilibriumRule> rules = new ArrayList<>();
    Set<String> names = new LinkedHashSet<>();
    for (TableObject row : file.rows("equilibrium", "name")) {
      row.allowOnly(
          "name",
          "leading",
          "holding",
          "overturning",
          "factors",
          "notionalSway",
          "work",
          "place",
          "confidence");
      LeadingAction leading = row.word("leading", LEADING);
      Map<ActionCategory, Figure> factors =
          row.has("factors") ? factors(row, known) : new EnumMap<>(ActionCategory.class);
      ActionCategory needed = CATEGORY_OF_LEADING.getOrDefault(leading, ActionCategory.PERMANENT);
      if (needed != ActionCategory.PERMANENT && !factors.containsKey(needed)) {
        throw row.fault(
            "\"factors\" lacks \"" + needed.words() + "\", the category of the leading action.");
      }
      EquilibriumRule rule =
          new EquilibriumRule(
              row.text("name"),
              leading,
              row.word("holding", known),
              row.word("overturning", known),
              factors,
              row.flag("notionalSway"),
              row.source());
      if (!names.add(rule.name())) {
        throw row.fault("this name is given twice.");
      }
      rules.add(rule);
    }
    return rules;
  }

  private static CombinationTemplate template(TableObject row, Map<String, Figure> known) {
    row.allowOnly(
        "name", "limitState", "leading", "factors", "notionalSway", "work", "place", "confidence");
    LeadingAction leading = row.word("leading", LEADING);
    Map<ActionCategory, Figure> factors = factors(row, known);
    ActionCategory needed = CATEGORY_OF_LEADING.getOrDefault(leading, ActionCategory.PERMANENT);
    if (!factors.containsKey(needed)) {
      throw row.fault(
          "\"factors\" lacks \"" + needed.words() + "\", the category of the leading action.");
    }
    return new CombinationTemplate(
        row.text("name"),
        row.word("limitState", LIMIT_STATES),
        leading,
        factors,
        row.flag("notionalSway"),
        row.source());
  }

  private static Map<ActionCategory, Figure> factors(TableObject row, Map<String, Figure> known) {
    Map<ActionCategory, Figure> factors = new EnumMap<>(ActionCategory.class);
    row.textsByName("factors")
        .forEach(
            (category, factor) ->
                factors.put(
                    row.meaning("factors", category, CATEGORIES),
                    row.meaning(category, factor, known)));
    Figure imposed = factors.get(ActionCategory.IMPOSED);
    if (imposed != null) {
      factors.putIfAbsent(ActionCategory.OTHER, imposed);
    }
    return factors;
  }
}
