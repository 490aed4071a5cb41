package spanledger.tables;

import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import spanledger.action.Figure;
import spanledger.action.RailDirection;
import spanledger.action.RuleSet;
import spanledger.geometry.GeometryRule;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** Reads rule sets from data files. */
public final class RuleTables {

  private static final Map<String, RailDirection> DIRECTIONS =
      Stream.of(RailDirection.values())
          .collect(Collectors.toUnmodifiableMap(RailDirection::words, d -> d));

  private static final Map<String, Dimension> OF_LOADS_AND_LIMITS =
      Map.ofEntries(
          Map.entry(RuleSet.FLOOR_AREA, Dimension.STRESS),
          Map.entry(RuleSet.FLOOR_POINT, Dimension.FORCE),
          Map.entry(RuleSet.FLOOR_POINT_PATCH, Dimension.LENGTH),
          Map.entry(RuleSet.FLOOR_LINE, Dimension.LINE_LOAD),
          Map.entry(RuleSet.DECK_POINT_PATCH, Dimension.LENGTH),
          Map.entry(RuleSet.TREAD_POINT, Dimension.FORCE),
          Map.entry(RuleSet.TREAD_POINT_PATCH, Dimension.LENGTH),
          Map.entry(RuleSet.TREAD_LINE, Dimension.LINE_LOAD),
          Map.entry(RuleSet.TREAD_DEFLECTION_RATIO, Dimension.NONE),
          Map.entry(RuleSet.TREAD_DEFLECTION, Dimension.LENGTH),
          Map.entry(RuleSet.GUARDRAIL_LINE, Dimension.LINE_LOAD),
          Map.entry(RuleSet.GUARDRAIL_POINT, Dimension.FORCE),
          Map.entry(RuleSet.MIDRAIL_POINT, Dimension.FORCE),
          Map.entry(RuleSet.GUARDRAIL_HEIGHT_LEAST, Dimension.LENGTH),
          Map.entry(RuleSet.GUARDRAIL_HEIGHT_MOST, Dimension.LENGTH),
          Map.entry(RuleSet.FLOOR_DEFLECTION_RATIO, Dimension.NONE),
          Map.entry(RuleSet.FLOOR_DEFLECTION, Dimension.LENGTH),
          Map.entry(RuleSet.RAIL_DEFLECTION, Dimension.LENGTH),
          Map.entry(RuleSet.SWAY_DEFLECTION_RATIO, Dimension.NONE),
          Map.entry(RuleSet.RESISTANCE_FACTOR, Dimension.NONE),
          Map.entry(RuleSet.RESISTANCE_DIVISOR, Dimension.NONE),
          Map.entry(RuleSet.NOTIONAL_SWAY, Dimension.NONE),
          Map.entry(RuleSet.CRITICAL_FACTOR, Dimension.NONE),
          Map.entry(RuleSet.VERTICAL_FREQUENCY, Dimension.FREQUENCY),
          Map.entry(RuleSet.LATERAL_FREQUENCY, Dimension.FREQUENCY),
          Map.entry(RuleSet.VIBRATING_SHARE, Dimension.NONE),
          Map.entry(RuleSet.ROBUSTNESS_SHARE, Dimension.NONE),
          Map.entry(RuleSet.ROBUSTNESS_FACTOR, Dimension.NONE));

  private static final Map<String, Dimension> DIMENSIONS = dimensions();

  private RuleTables() {}

  private static Map<String, Dimension> dimensions() {
    Map<String, Dimension> all = new TreeMap<>(GeometryRule.dimensions());
    all.putAll(OF_LOADS_AND_LIMITS);
    return Map.copyOf(all);
  }

  /**
   * Figures that checks look for and no shipped set has, each with a value of nothing: jobs and
   * sets of users may give them.
   */
  public static List<Figure> figuresToGive() {
    return List.of(
        toGive(
            RuleSet.DECK_POINT_PATCH,
            "side of the square that the load at one place stands on, for decking"),
        toGive(RuleSet.TREAD_LINE, "load along a tread"));
  }

  private static Figure toGive(String id, String words) {
    Dimension dimension = Optional.ofNullable(OF_LOADS_AND_LIMITS.get(id)).orElseThrow();
    return new Figure(id, words, "", 0, dimension, Source.declared("not given"), "");
  }

  /** All rule sets that come with this module, in the order of its files. */
  public static List<RuleSet> ruleSets() {
    Map<String, RuleSet> sets = new LinkedHashMap<>();
    for (TableObject file : TableFile.shippedIn("rule-sets")) {
      RuleSet set = file.has("inherits") ? own("rule-sets", file).on(Map.copyOf(sets)) : read(file);
      sets.put(set.id(), set);
    }
    return List.copyOf(sets.values());
  }

  /**
   * A rule set that comes with this module.
   *
   * @throws IllegalArgumentException if there is none of that id; the message names those there are
   */
  public static RuleSet ruleSet(String id) {
    Map<String, RuleSet> sets = new LinkedHashMap<>();
    ruleSets().forEach(set -> sets.put(set.id(), set));
    RuleSet found = sets.get(id);
    if (found == null) {
      throw new IllegalArgumentException(
          "There is no rule set \"" + id + "\"." + TableObject.choices(id, sets.keySet()));
    }
    return found;
  }

  /**
   * Reads a rule set.
   *
   * @param name what messages call the file
   * @param content the file, read to its end but not closed
   * @throws TableFormatException if it is not a rule set; the message names the row
   */
  public static RuleSet read(String name, InputStream content) {
    return read(TableFile.read(name, content));
  }

  private static RuleSet read(TableObject file) {
    file.allowOnly("id", "title", "format", "railDirections", "figures");
    Map<String, Figure> figures = new TreeMap<>();
    for (TableObject row : file.rows("figures", "id")) {
      Figure figure = figure(row);
      if (figures.put(figure.id(), figure) != null) {
        throw row.fault("this figure is given twice.");
      }
    }
    return new RuleSet(
        file.text("id"),
        file.text("title"),
        figures,
        file.words("railDirections", DIRECTIONS).stream().distinct().toList(),
        file.optionalText("format"));
  }

  /** A rule set of a user's; all rows with faults are told at once. */
  static OwnRules own(String name, TableObject file) {
    file.allowOnly(
        "table", "id", "title", "format", "inherits", "railDirections", "figures", "rows");
    Optional<String> inherits = file.optionalText("inherits");
    Map<String, Figure> given = new TreeMap<>();
    List<Figure> figures =
        TableObject.readAll(
            file.rows(file.has("rows") ? "rows" : "figures", "id"),
            row -> {
              Figure figure = figure(row);
              if (given.put(figure.id(), figure) != null) {
                throw row.fault("this figure is given twice.");
              }
              return figure;
            });
    boolean directed = inherits.isEmpty() || file.has("railDirections");
    return new OwnRules(
        name,
        file.text("id"),
        file.text("title"),
        inherits,
        directed
            ? file.words("railDirections", DIRECTIONS).stream().distinct().toList()
            : List.of(),
        figures,
        file.optionalText("format"));
  }

  private static Figure figure(TableObject row) {
    row.allowOnly("id", "words", "value", "work", "place", "confidence", "note");
    return FigureRow.read(row, row.word("id", DIMENSIONS));
  }
}
