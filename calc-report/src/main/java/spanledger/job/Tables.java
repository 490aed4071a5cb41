package spanledger.job;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import spanledger.action.CombinationSet;
import spanledger.action.Figure;
import spanledger.action.RuleSet;
import spanledger.bolt.BoltTable;
import spanledger.material.AlloyTable;
import spanledger.section.CatalogueSection;
import spanledger.tables.AlloyTables;
import spanledger.tables.BoltTables;
import spanledger.tables.CombinationTables;
import spanledger.tables.Library;
import spanledger.tables.RuleTables;
import spanledger.tables.SectionTables;

/**
 * The published data that a job file refers to by name.
 *
 * @param alloys the alloys
 * @param rules the rule sets by id
 * @param combinations the combination rules by id
 * @param codes the member codes by id
 * @param sections the catalogue sections by name, in the order of the data
 * @param bolts the bolts
 */
public record Tables(
    AlloyTable alloys,
    Map<String, RuleSet> rules,
    Map<String, CombinationSet> combinations,
    Map<String, MemberCodeChoice> codes,
    Map<String, CatalogueSection> sections,
    BoltTable bolts) {
  public Tables {
    rules = Collections.unmodifiableMap(new TreeMap<>(rules));
    combinations = Collections.unmodifiableMap(new TreeMap<>(combinations));
    codes = Collections.unmodifiableMap(new TreeMap<>(codes));
    sections = Collections.unmodifiableMap(new LinkedHashMap<>(sections));
  }

  /** Tables without sections and bolts. */
  public Tables(
      AlloyTable alloys,
      Map<String, RuleSet> rules,
      Map<String, CombinationSet> combinations,
      Map<String, MemberCodeChoice> codes) {
    this(alloys, rules, combinations, codes, Map.of(), BoltTable.EMPTY);
  }

  /**
   * These tables with what a library adds; of one name, the library's rows count.
   *
   * @throws spanledger.tables.TableFormatException if a rule set inherits from one that is not
   *     there
   */
  public Tables with(Library library) {
    Map<String, RuleSet> sets = new TreeMap<>(rules);
    library.rules().forEach(own -> sets.put(own.id(), own.on(sets)));
    Map<String, CatalogueSection> all = new LinkedHashMap<>(sections);
    library.sections().forEach(section -> all.put(section.name(), section));
    return new Tables(
        alloys.replacing(library.alloys()),
        sets,
        combinations,
        codes,
        all,
        bolts.with(library.bolts()));
  }

  /** The codes by which joints can be checked, by the id of their figures. */
  Map<String, JointCodeChoice> jointCodes() {
    return JointCodes.of(codes);
  }

  /** The data that come with the program. */
  public static Tables shipped() {
    Map<String, RuleSet> rules = new TreeMap<>();
    RuleTables.ruleSets().forEach(set -> rules.put(set.id(), set));
    Map<String, CombinationSet> combinations = new TreeMap<>();
    CombinationTables.sets().forEach(set -> combinations.put(set.id(), set));
    return new Tables(AlloyTables.standard(), rules, combinations, MemberCodes.shipped())
        .with(
            new Library(
                SectionTables.standard(), new AlloyTable(List.of()), BoltTables.standard()));
  }

  /**
   * Every figure that some rule set has, by id; of several the one of the first set in alphabetical
   * order.
   */
  Map<String, Figure> knownFigures() {
    Map<String, Figure> known = new TreeMap<>();
    rules.values().forEach(set -> set.inOrder().forEach(f -> known.putIfAbsent(f.id(), f)));
    RuleTables.figuresToGive().forEach(f -> known.putIfAbsent(f.id(), f));
    return known;
  }
}
