package spanledger.cli;

import java.io.PrintWriter;
import java.nio.charset.Charset;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/**
 * The {@code spanledger} command. On its own it prints its usage; the work is done by its
 * subcommands.
 */
@Command(
    name = "spanledger",
    description =
        "Proves in numbers that a modular aluminium access structure (platform, walkway, stair,"
            + " guardrail) is strong, stiff and stable enough.",
    mixinStandardHelpOptions = true,
    versionProvider = BuildVersion.class,
    synopsisSubcommandLabel = "COMMAND",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:every check passes",
      "1:a check fails or is not checked",
      "2:the input or the command line is wrong",
      "3:a fault of the program itself"
    },
    footerHeading = "%nCautions:%n",
    footer = {
      "People stand on these structures. The results are not a substitute for the",
      "judgement and signature of a licensed engineer. Local codes and authorities",
      "govern."
    })
public final class Main implements Runnable {

  @Spec private CommandSpec spec;

  @Option(
      names = "--trace",
      scope = ScopeType.INHERIT,
      description = "After a fault of the program, print where it arose.")
  private boolean trace;

  @SuppressWarnings("NullAway.Init") // picocli injects spec before it runs the command
  private Main() {}

  /** Runs the command and ends the process with one of the exit codes of {@link ExitCode}. */
  public static void main(String[] args) {
    Charset charset = Charset.defaultCharset();
    PrintWriter out = new PrintWriter(System.out, true, charset);
    PrintWriter err = new PrintWriter(System.err, true, charset);
    System.exit(run(out, err, args));
  }

  /**
   * Runs the command without ending the process.
   *
   * @param out where results, help and version go
   * @param err where messages about wrong input and faults go
   * @param args the words of the command line
   * @return the exit code, one of {@link ExitCode}
   */
  public static int run(PrintWriter out, PrintWriter err, String... args) {
    Main main = new Main();
    try {
      return new CommandLine(main)
          .addSubcommand(new CheckCommand(new JobCalculation()))
          .addSubcommand(new RulesCommand())
          .addSubcommand(new StairsCommand())
          .addSubcommand(new SectionCommand())
          .addSubcommand(new CatalogueCommand())
          .setOut(out)
          .setErr(err)
          .setExecutionExceptionHandler(new FaultMessage(() -> main.trace))
          .execute(args);
    } catch (OutOfMemoryError fault) {
      err.println(FaultMessage.outOfMemory(Runtime.getRuntime().maxMemory()));
      err.flush();
      return ExitCode.OWN_FAULT;
    } catch (StackOverflowError fault) {
      err.println(FaultMessage.message("spanledger", fault));
      err.flush();
      return ExitCode.OWN_FAULT;
    }
  }

  @Override
  public void run() {
    throw new CommandLine.ParameterException(
        spec.commandLine(), "No command given; the usage below lists what there is.");
  }
}
