package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spanledger.action.Actions;
import spanledger.action.CategorisedCase;
import spanledger.action.Combination;
import spanledger.action.LoadCase;
import spanledger.analysis.CaseResult;
import spanledger.analysis.FrameAnalysis;
import spanledger.envelope.DeflectionFinding;
import spanledger.envelope.Findings;
import spanledger.envelope.Instance;
import spanledger.envelope.ReactionFinding;
import spanledger.envelope.Standing;
import spanledger.envelope.StrengthFinding;
import spanledger.frame.Freedom;
import spanledger.frame.Node;

/**
 * The load cases that govern something, solved one by one: fixed cases first, then moving loads
 * where they stand worst.
 */
final class KeptCases {

  /**
   * One case in the workbook.
   *
   * @param number from 1
   * @param words what it is
   * @param result its solution
   */
  record Kept(int number, String words, CaseResult result) implements Solved {
    LoadCase loads() {
      return result.loadCase();
    }

    @Override
    public int index() {
      return number - 1;
    }

    @Override
    public String name() {
      return loads().name();
    }

    @Override
    public double movement(Node node, Freedom freedom) {
      return result.movement(node, freedom);
    }
  }

  /**
   * A case in a combination.
   *
   * @param kept the case
   * @param term the fixed term it stands for; empty for the moving load
   */
  record Part(Kept kept, Optional<Combination.Term> term) {}

  private final List<Kept> cases = new ArrayList<>();
  private final Map<String, Kept> byKey = new LinkedHashMap<>();
  private final Map<String, Instance> instances = new LinkedHashMap<>();

  private KeptCases() {}

  /**
   * Gathers and solves the cases of all governing combinations.
   *
   * @param more combinations beside those of the findings
   * @param masses names of cases that are needed for what weighs in them
   */
  static KeptCases of(
      Actions actions,
      Findings findings,
      List<Instance> more,
      Set<String> masses,
      FrameAnalysis analysis) {
    KeptCases kept = new KeptCases();
    kept.collect(findings);
    more.forEach(kept::add);
    List<LoadCase> loads = new ArrayList<>();
    List<String> words = new ArrayList<>();
    List<String> keys = new ArrayList<>();
    for (CategorisedCase fixed : actions.cases()) {
      if (kept.uses(fixed.loads()) || masses.contains(fixed.loads().name())) {
        loads.add(fixed.loads());
        words.add(fixed.words());
        keys.add(fixed.loads().name());
      }
    }
    for (Standing standing : kept.standings()) {
      loads.add(new LoadCase(standing.words(), List.of(), standing.placed()));
      words.add("Moving load where it governs");
      keys.add(key(standing));
    }
    List<CaseResult> results = analysis.solve(loads).results();
    for (int i = 0; i < results.size(); i++) {
      Kept one = new Kept(i + 1, words.get(i), results.get(i));
      kept.cases.add(one);
      kept.byKey.put(keys.get(i), one);
    }
    return kept;
  }

  private void collect(Findings findings) {
    for (StrengthFinding finding : findings.strength()) {
      add(finding.governing().instance());
    }
    for (DeflectionFinding finding : findings.deflections()) {
      add(finding.governing().instance());
    }
    for (ReactionFinding finding : findings.reactions()) {
      add(finding.instance());
    }
  }

  private void add(Instance instance) {
    instances.putIfAbsent(key(instance), instance);
  }

  private boolean uses(LoadCase loads) {
    return instances.values().stream()
        .flatMap(i -> i.terms().stream())
        .anyMatch(t -> t.loadCase().name().equals(loads.name()));
  }

  private List<Standing> standings() {
    Map<String, Standing> distinct = new LinkedHashMap<>();
    for (Instance instance : instances.values()) {
      instance.standing().ifPresent(s -> distinct.putIfAbsent(key(s), s));
    }
    return List.copyOf(distinct.values());
  }

  static String key(Instance instance) {
    return instance.combination().name()
        + "|"
        + instance.patternWords()
        + "|"
        + instance.standing().map(KeptCases::key).orElse("");
  }

  private static String key(Standing standing) {
    // Places that differ by less than the words tell are one case.
    return standing.words();
  }

  /** All cases in order. */
  List<Kept> cases() {
    return cases;
  }

  /** A fixed case by its name. */
  Kept caseNamed(String name) {
    return required(name);
  }

  /** All governing combinations in order. */
  List<Instance> instances() {
    return List.copyOf(instances.values());
  }

  /** The cases of a governing combination, the moving load last. */
  List<Part> parts(Instance instance) {
    List<Part> parts = new ArrayList<>();
    for (Combination.Term term : instance.terms()) {
      parts.add(new Part(required(term.loadCase().name()), Optional.of(term)));
    }
    instance.standing().ifPresent(s -> parts.add(new Part(required(key(s)), Optional.empty())));
    return parts;
  }

  private Kept required(String key) {
    Kept kept = byKey.get(key);
    if (kept == null) {
      throw new IllegalStateException("Case " + key + " is not kept.");
    }
    return kept;
  }
}
