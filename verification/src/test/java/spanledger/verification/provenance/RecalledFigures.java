package spanledger.verification.provenance;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import spanledger.action.CombinationSet;
import spanledger.action.CombinationTemplate;
import spanledger.action.EquilibriumRule;
import spanledger.action.Figure;
import spanledger.action.RuleSet;
import spanledger.bolt.BoltGrade;
import spanledger.bolt.BoltSize;
import spanledger.material.Alloy;
import spanledger.material.TemperStrengths;
import spanledger.procedure.Procedure;
import spanledger.procedure.Step;
import spanledger.provenance.Confidence;
import spanledger.provenance.Source;
import spanledger.resistance.joint.ContactAdvice;
import spanledger.resistance.member.CodeFigures;
import spanledger.tables.AlloyTables;
import spanledger.tables.BoltTables;
import spanledger.tables.CombinationTables;
import spanledger.tables.ContactTables;
import spanledger.tables.MemberRuleTables;
import spanledger.tables.RuleTables;
import spanledger.tables.TemperTables;

/** Every figure and formula that is marked as recalled from memory, as lists in Markdown. */
final class RecalledFigures {

  private static final int WIDTH = 138;
  private static final String RECALLED = "from memory";

  private final StringBuilder text = new StringBuilder();

  private RecalledFigures() {}

  /** The lists, one section per kind of data, ending in a line break. */
  static String markdown() {
    RecalledFigures recalled = new RecalledFigures();
    RuleTables.ruleSets().forEach(recalled::add);
    CombinationTables.sets().forEach(recalled::add);
    MemberRuleTables.all().forEach(recalled::add);
    recalled.addAlloys();
    recalled.addBolts();
    recalled.addContacts();
    recalled.addFormulas();
    return recalled.text.toString();
  }

  private void add(RuleSet rules) {
    heading("Rule set `" + rules.id() + "`");
    for (Figure figure : rules.inOrder()) {
      if (isRecalled(figure.source())) {
        item("`" + figure.id() + "` " + figure.text() + ": " + figure.source().citation());
      }
    }
  }

  private void add(CodeFigures code) {
    heading("Member code `" + code.id() + "`");
    for (Figure figure : code.inOrder()) {
      if (isRecalled(figure.source())) {
        item("`" + figure.id() + "` " + figure.text() + ": " + figure.source().citation());
      }
    }
  }

  private void addBolts() {
    heading("Bolts");
    for (BoltGrade grade : BoltTables.standard().grades()) {
      if (isRecalled(grade.proofSource())) {
        item(
            "`"
                + grade.name()
                + "` 0.2 % proof strength "
                + Math.round(grade.proofStrength())
                + " MPa: "
                + grade.proofSource().citation());
      }
    }
    for (BoltSize size : BoltTables.standard().sizes()) {
      if (isRecalled(size.source())) {
        item("`" + size.name() + "` all sizes but the stress area: " + size.source().citation());
      }
    }
  }

  private void addContacts() {
    heading("Advice on metals that touch");
    for (ContactAdvice row : ContactTables.standard().rows()) {
      if (isRecalled(row.source())) {
        item(
            row.metal().words()
                + " and "
                + row.other().words()
                + ", "
                + row.surroundings().words()
                + ": "
                + row.source().citation());
      }
    }
  }

  private void add(CombinationSet set) {
    heading("Combinations `" + set.id() + "`");
    Map<String, Set<String>> factors = new TreeMap<>();
    Map<String, Set<String>> lines = new LinkedHashMap<>();
    for (CombinationTemplate template : set.templates()) {
      for (Figure factor : template.factors().values()) {
        if (isRecalled(factor.source())) {
          String what = "factor " + factor.text() + ", " + factor.words();
          put(factors, what, factor.source().citation());
        }
      }
      if (isRecalled(template.source())) {
        put(lines, template.source().citation(), template.name());
      }
    }
    for (EquilibriumRule rule : set.equilibrium()) {
      for (Figure factor : rule.figures().values()) {
        if (isRecalled(factor.source())) {
          put(
              factors,
              "factor " + factor.text() + ", " + factor.words(),
              factor.source().citation());
        }
      }
      if (isRecalled(rule.source())) {
        put(lines, rule.source().citation(), rule.name());
      }
    }
    factors.forEach((factor, sources) -> item(factor + ": " + String.join("; ", sources)));
    lines.forEach((source, names) -> item("lines " + String.join("; ", names) + ": " + source));
    if (factors.isEmpty() && lines.isEmpty()) {
      item("none");
    }
  }

  private void addAlloys() {
    heading("Alloys");
    Map<String, Set<String>> alloys = new LinkedHashMap<>();
    for (Alloy alloy : AlloyTables.standard().rows()) {
      if (isRecalled(alloy.source())) {
        put(alloys, "strengths, " + alloy.source().citation(), alloy.designation());
      }
      alloy
          .heatAffected()
          .filter(beside -> isRecalled(beside.source()))
          .ifPresent(
              beside ->
                  put(
                      alloys,
                      "strengths beside welds, " + beside.source().citation(),
                      alloy.designation()));
      if (alloy.note().contains(RECALLED)) {
        put(alloys, "note: " + alloy.note(), alloy.designation());
      }
    }
    for (TemperStrengths temper : TemperTables.standard().rows()) {
      if (isRecalled(temper.source())) {
        put(
            alloys,
            "compressive yield, coefficients, " + temper.source().citation(),
            temper.designation());
      }
    }
    alloys.forEach((what, names) -> item(what + " *Rows:* " + String.join(", ", names)));
  }

  /** The steps of all procedures of the program, then sources of constants that are in no step. */
  private void addFormulas() {
    heading("Formulas and constants in the program");
    Map<String, Set<String>> formulas = new LinkedHashMap<>();
    Set<Source> constants = new LinkedHashSet<>();
    Set<Source> used = new LinkedHashSet<>();
    for (Object value : constantsOfTheProgram()) {
      if (value instanceof Procedure procedure) {
        for (Step step : procedure.steps()) {
          if (isRecalled(step.source())) {
            used.add(step.source());
            put(
                formulas,
                procedure.title() + ", " + step.source().citation(),
                step.symbol().symbol());
          }
        }
      } else if (value instanceof Source source && isRecalled(source)) {
        constants.add(source);
      }
    }
    formulas.forEach((where, symbols) -> item(where + ": " + String.join(", ", symbols)));
    constants.removeAll(used);
    constants.forEach(source -> item("constants: " + source.citation()));
  }

  /** What the static fields of the program hold, in the order of their names. */
  private static List<Object> constantsOfTheProgram() {
    Map<String, Object> values = new TreeMap<>();
    for (JavaClass type :
        new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("spanledger")) {
      for (JavaField field : type.getFields()) {
        if (field.getModifiers().contains(JavaModifier.STATIC)
            && (field.getRawType().isEquivalentTo(Procedure.class)
                || field.getRawType().isEquivalentTo(Source.class))) {
          values.put(field.getFullName(), valueOf(field.reflect()));
        }
      }
    }
    return new ArrayList<>(values.values());
  }

  private static Object valueOf(Field field) {
    try {
      field.setAccessible(true);
      return field.get(null);
    } catch (IllegalAccessException e) {
      throw new IllegalStateException("A static field cannot be read: " + field + ".", e);
    }
  }

  private static boolean isRecalled(Source source) {
    return source.confidence() == Confidence.FROM_MEMORY;
  }

  private static void put(Map<String, Set<String>> map, String key, String value) {
    map.computeIfAbsent(key, k -> new TreeSet<>()).add(value);
  }

  private void heading(String words) {
    text.append(text.isEmpty() ? "" : "\n").append("### ").append(words).append("\n\n");
  }

  /** A list item, broken at spaces where it is too long. */
  private void item(String words) {
    StringBuilder line = new StringBuilder("-");
    for (String word : words.split(" ", -1)) {
      if (line.length() + 1 + word.length() > WIDTH) {
        text.append(line).append('\n');
        line = new StringBuilder(" ");
      }
      line.append(' ').append(word);
    }
    text.append(line).append('\n');
  }
}
