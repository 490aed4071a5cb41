package spanledger.cli;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import spanledger.action.ActionCategory;
import spanledger.action.CombinationSet;
import spanledger.action.CombinationTemplate;
import spanledger.action.EquilibriumRule;
import spanledger.action.Figure;
import spanledger.action.RailDirection;
import spanledger.action.RuleSet;
import spanledger.provenance.Source;
import spanledger.resistance.member.CodeFigures;

/** Rule sets and combination rules as text for a terminal. */
final class RuleText {

  private RuleText() {}

  /** Ids and titles of all sets. */
  static String list(
      Collection<RuleSet> rules,
      Collection<CombinationSet> combinations,
      Collection<CodeFigures> codes) {
    StringBuilder text = new StringBuilder("Rule sets (\"rules\" in a job file):\n");
    rules.forEach(set -> text.append(line(set.id(), set.title())));
    text.append("\nCombination rules (\"combinations\" in a job file):\n");
    combinations.forEach(set -> text.append(line(set.id(), set.title())));
    text.append("\nMember codes (\"memberChecks\" in a job file):\n");
    codes.forEach(code -> text.append(line(code.id(), code.title())));
    text.append("\n\"spanledger rules ID\" shows one with its sources.\n");
    return text.toString();
  }

  private static String line(String id, String title) {
    return String.format("  %-16s %s%n", id, title).replace("\r\n", "\n");
  }

  /** Every figure of a rule set with its source. */
  static String figures(RuleSet rules) {
    StringBuilder text = new StringBuilder(rules.id() + ": " + rules.title() + "\n");
    text.append("Guardrail loads act, one at a time: ").append(directions(rules)).append("\n");
    append(text, rules.inOrder());
    return text.toString();
  }

  /** Every figure of a member code with its source. */
  static String figures(CodeFigures code) {
    StringBuilder text = new StringBuilder(code.id() + ": " + code.title() + "\n");
    append(text, code.inOrder());
    return text.toString();
  }

  private static void append(StringBuilder text, List<Figure> figures) {
    for (Figure figure : figures) {
      text.append('\n').append(figure.id()).append("  ").append(figure.words()).append('\n');
      text.append("    ").append(figure.text()).append('\n');
      text.append("    ").append(cited(figure.source())).append('\n');
      if (!figure.note().isEmpty()) {
        text.append("    ").append(figure.note()).append('\n');
      }
    }
  }

  private static String directions(RuleSet rules) {
    return rules.railDirections().stream()
        .map(RailDirection::words)
        .collect(Collectors.joining(", "));
  }

  /** Rule sets side by side: under each figure a line for each set. */
  static String compared(List<RuleSet> sets) {
    Map<String, String> words = new TreeMap<>();
    sets.forEach(set -> set.inOrder().forEach(f -> words.putIfAbsent(f.id(), f.words())));
    int idWidth = sets.stream().mapToInt(set -> set.id().length()).max().orElse(0);
    int valueWidth =
        sets.stream()
            .flatMap(set -> set.inOrder().stream())
            .mapToInt(figure -> figure.text().length())
            .max()
            .orElse(0);
    StringBuilder text = new StringBuilder();
    sets.forEach(set -> text.append(line(set.id(), set.title())));
    words.forEach(
        (id, meaning) -> {
          text.append('\n').append(id).append("  ").append(meaning).append('\n');
          for (RuleSet set : sets) {
            String value = set.find(id).map(Figure::text).orElse("-");
            String source = set.find(id).map(f -> cited(f.source())).orElse("no figure");
            text.append("    ").append(padded(set.id(), idWidth)).append("  ");
            text.append(padded(value, valueWidth)).append("  ").append(source).append('\n');
          }
        });
    text.append("\nguardrail loads act, one at a time\n");
    for (RuleSet set : sets) {
      text.append("    ").append(padded(set.id(), idWidth)).append("  ");
      text.append(directions(set)).append('\n');
    }
    return text.toString();
  }

  /** Every line of combination rules with its factors and sources. */
  static String templates(CombinationSet set) {
    StringBuilder text = new StringBuilder(set.id() + ": " + set.title() + "\n");
    for (CombinationTemplate template : set.templates()) {
      text.append('\n').append(template.name()).append("  ");
      text.append(template.limitState().words());
      text.append(template.withNotionalSway() ? ", with notional sway" : "").append('\n');
      text.append("    ").append(cited(template.source())).append('\n');
      for (Map.Entry<ActionCategory, Figure> factor : sorted(template).entrySet()) {
        Figure figure = factor.getValue();
        text.append("    ").append(padded(factor.getKey().words(), 10)).append("  ");
        text.append(figure.text()).append("  ").append(figure.words()).append("  ");
        text.append(cited(figure.source())).append('\n');
      }
    }
    for (EquilibriumRule rule : set.equilibrium()) {
      text.append('\n').append(rule.name()).append("  tipping and sliding");
      text.append(rule.withNotionalSway() ? ", with notional sway" : "").append('\n');
      text.append("    ").append(cited(rule.source())).append('\n');
      for (Figure figure : rule.figures().values()) {
        text.append("    ").append(padded(figure.id(), 10)).append("  ");
        text.append(figure.text()).append("  ").append(figure.words()).append("  ");
        text.append(cited(figure.source())).append('\n');
      }
    }
    return text.toString();
  }

  private static Map<ActionCategory, Figure> sorted(CombinationTemplate template) {
    return new TreeMap<>(template.factors());
  }

  private static String cited(Source source) {
    return source.citation() + " (" + source.confidence().words() + ")";
  }

  private static String padded(String text, int width) {
    return text + " ".repeat(Math.max(0, width - text.length()));
  }
}
