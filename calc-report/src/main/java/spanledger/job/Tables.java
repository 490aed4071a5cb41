package spanledger.job;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import spanledger.action.CombinationSet;
import spanledger.action.Figure;
import spanledger.action.RuleSet;
import spanledger.material.AlloyTable;
import spanledger.tables.AlloyTables;
import spanledger.tables.CombinationTables;
import spanledger.tables.RuleTables;

/**
 * The published data that a job file refers to by name.
 *
 * @param alloys the alloys
 * @param rules the rule sets by id
 * @param combinations the combination rules by id
 * @param codes the member codes by id
 */
public record Tables(
    AlloyTable alloys,
    Map<String, RuleSet> rules,
    Map<String, CombinationSet> combinations,
    Map<String, MemberCodeChoice> codes) {
  public Tables {
    rules = Collections.unmodifiableMap(new TreeMap<>(rules));
    combinations = Collections.unmodifiableMap(new TreeMap<>(combinations));
    codes = Collections.unmodifiableMap(new TreeMap<>(codes));
  }

  /** The data that come with the program. */
  public static Tables shipped() {
    Map<String, RuleSet> rules = new TreeMap<>();
    RuleTables.ruleSets().forEach(set -> rules.put(set.id(), set));
    Map<String, CombinationSet> combinations = new TreeMap<>();
    CombinationTables.sets().forEach(set -> combinations.put(set.id(), set));
    return new Tables(AlloyTables.standard(), rules, combinations, MemberCodes.shipped());
  }

  /**
   * Every figure that some rule set has, by id; of several the one of the first set in alphabetical
   * order.
   */
  Map<String, Figure> knownFigures() {
    Map<String, Figure> known = new TreeMap<>();
    rules.values().forEach(set -> set.inOrder().forEach(f -> known.putIfAbsent(f.id(), f)));
    return known;
  }
}
