package spanledger.cli;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import spanledger.action.RuleSet;
import spanledger.geometry.StairSolver;
import spanledger.job.Tables;
import spanledger.quantity.Dimension;
import spanledger.tables.QuantityFormatException;
import spanledger.tables.QuantityReader;

/** Lists the stairs that a rule set allows over a height. */
@Command(
    name = "stairs",
    description =
        "Lists every number of equal rises that a rule set allows over a height, with the goings and"
            + " pitches for each, and what comes nearest.",
    mixinStandardHelpOptions = true,
    versionProvider = BuildVersion.class)
final class StairsCommand implements Callable<Integer> {

  /** How many of the nearest misses are shown. */
  private static final int MISSES = 3;

  @Spec private CommandSpec spec;

  @Option(
      names = "--rise",
      paramLabel = "LENGTH",
      required = true,
      description = "The height from the foot to the floor, for example \"2200 mm\".")
  private String rise;

  @Option(
      names = "--run",
      paramLabel = "LENGTH",
      description =
          "The level length at hand from the first nosing to that of the floor; any if left out.")
  private @Nullable String run;

  @Option(
      names = "--rules",
      paramLabel = "ID",
      required = true,
      description = "The rule set; \"spanledger rules\" lists them.")
  private String rules;

  @Option(names = "--json", description = "Print as JSON.")
  private boolean json;

  @SuppressWarnings("NullAway.Init") // picocli injects spec, rise and rules before it calls
  StairsCommand() {}

  @Override
  public Integer call() {
    RuleSet set = Tables.shipped().rules().get(rules);
    if (set == null) {
      throw new ParameterException(
          spec.commandLine(),
          "There is no rule set \""
              + rules
              + "\"; there are "
              + String.join(", ", Tables.shipped().rules().keySet())
              + ".");
    }
    double height = length("--rise", rise);
    Optional<Double> space = Optional.ofNullable(run).map(text -> length("--run", text));
    StairSolver solver = new StairSolver(height, space, set);
    StairAnswers answers =
        new StairAnswers(height, space, set, solver.allowed(), solver.nearestMisses(MISSES));
    PrintWriter out = spec.commandLine().getOut();
    out.print(json ? answers.json() : answers.text());
    out.flush();
    return solver.allowed().isEmpty() ? ExitCode.NOT_ALL_PASS : ExitCode.ALL_PASS;
  }

  private double length(String option, String text) {
    double read;
    try {
      read = QuantityReader.read(text, Dimension.LENGTH);
    } catch (QuantityFormatException e) {
      throw new ParameterException(
          spec.commandLine(),
          option + ": found " + e.found() + "; expected " + e.expected() + ". " + e.remedy());
    }
    if (!(read > 0 && read <= 1e6)) {
      throw new ParameterException(
          spec.commandLine(),
          option + ": found " + text + "; expected more than 0 mm, up to 1 km.");
    }
    return read;
  }
}
