package spanledger.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import spanledger.action.CombinationSet;
import spanledger.action.RuleSet;
import spanledger.job.MemberCodeChoice;
import spanledger.job.Tables;
import spanledger.resistance.member.CodeFigures;
import spanledger.tables.Library;
import spanledger.tables.NearMiss;
import spanledger.tables.TableFormatException;

/** Shows the rule sets, combination rules and member codes, figure by figure with sources. */
@Command(
    name = "rules",
    description =
        "Lists rule sets, combination rules and member codes, or shows the figures of one with their sources.",
    mixinStandardHelpOptions = true,
    versionProvider = BuildVersion.class)
final class RulesCommand implements Runnable {

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "ID",
      arity = "0..1",
      description =
          "The rule set, combination rules or member code to show; all are listed if left out.")
  private @Nullable String id;

  @Option(
      names = "--compare",
      paramLabel = "ID",
      arity = "2..*",
      description = "Rule sets to show side by side, two or more.")
  private List<String> compared = new ArrayList<>();

  @Option(
      names = "--library",
      paramLabel = "FILE",
      description = "A data file of your own with a rule set; may be given several times.")
  private List<Path> libraries = new ArrayList<>();

  @Option(names = "--json", description = "Print as JSON.")
  private boolean json;

  @SuppressWarnings("NullAway.Init") // picocli injects spec before it runs the command
  RulesCommand() {}

  @Override
  public void run() {
    Tables tables = tables();
    PrintWriter out = spec.commandLine().getOut();
    if (!compared.isEmpty()) {
      List<RuleSet> sets = comparedSets(tables);
      out.print(json ? RuleJson.of(sets, List.of(), List.of()) : RuleText.compared(sets));
    } else if (id == null) {
      out.print(
          json
              ? RuleJson.of(tables.rules().values(), tables.combinations().values(), codes(tables))
              : RuleText.list(
                  tables.rules().values(), tables.combinations().values(), codes(tables)));
    } else {
      out.print(one(tables, id));
    }
    out.flush();
  }

  private Tables tables() {
    Tables tables = Tables.shipped();
    for (Path library : libraries) {
      try (InputStream content = Files.newInputStream(library)) {
        tables = tables.with(Library.read(library.toString(), content));
      } catch (TableFormatException e) {
        throw wrong(String.valueOf(e.getMessage()));
      } catch (IOException e) {
        throw wrong("The library " + library + " cannot be read; check the path.");
      }
    }
    return tables;
  }

  private String one(Tables tables, String name) {
    RuleSet rules = tables.rules().get(name);
    if (rules != null) {
      return json ? RuleJson.of(List.of(rules), List.of(), List.of()) : RuleText.figures(rules);
    }
    MemberCodeChoice code = tables.codes().get(name);
    if (code != null) {
      return json
          ? RuleJson.of(List.of(), List.of(), List.of(code.figures()))
          : RuleText.figures(code.figures());
    }
    CombinationSet set = tables.combinations().get(name);
    if (set == null) {
      Set<String> known = new TreeSet<>(tables.rules().keySet());
      known.addAll(tables.combinations().keySet());
      known.addAll(tables.codes().keySet());
      throw unknown(name, "rule set, combination rule or member code", known);
    }
    return json ? RuleJson.of(List.of(), List.of(set), List.of()) : RuleText.templates(set);
  }

  private static List<CodeFigures> codes(Tables tables) {
    return tables.codes().values().stream().map(MemberCodeChoice::figures).toList();
  }

  private List<RuleSet> comparedSets(Tables tables) {
    if (id != null) {
      throw wrong("Give either one ID or --compare with several, not both.");
    }
    List<RuleSet> sets = new ArrayList<>();
    for (String name : compared) {
      RuleSet set = tables.rules().get(name);
      if (set == null) {
        throw unknown(name, "rule set", tables.rules().keySet());
      }
      sets.add(set);
    }
    return sets;
  }

  private ParameterException unknown(String name, String kind, Set<String> known) {
    String near = NearMiss.of(name, known).map(n -> " Did you mean " + n + "?").orElse("");
    return wrong(
        "There is no "
            + kind
            + " \""
            + name
            + "\"; there are "
            + String.join(", ", known)
            + "."
            + near);
  }

  private ParameterException wrong(String message) {
    return new ParameterException(spec.commandLine(), message);
  }
}
