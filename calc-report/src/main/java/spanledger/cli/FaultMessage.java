package spanledger.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.function.BooleanSupplier;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/**
 * Turns an unexpected exception into one message; with {@code --trace}, the stack trace follows it.
 */
final class FaultMessage implements IExecutionExceptionHandler {

  private final BooleanSupplier trace;

  /**
   * The message.
   *
   * @param trace whether the stack trace is wanted, asked when there is one
   */
  FaultMessage(BooleanSupplier trace) {
    this.trace = trace;
  }

  /** The message for a fault. */
  static String message(String command, Throwable fault) {
    return "spanledger: fault of the program in '"
        + command
        + "', not of its input: "
        + fault.toString().replaceAll("\\s+", " ")
        + ". Nothing was proved. Please report this message with the command and its input"
        + " (--trace adds the details).";
  }

  /**
   * The message when memory runs out.
   *
   * @param most bytes that the program may use
   */
  static String outOfMemory(long most) {
    return String.format(
        Locale.ROOT,
        "spanledger: this job needs more memory than the %.1f GiB that the program may use."
            + " Nothing was proved. Give it more with SPANLEDGER_JAVA_OPTS=-Xmx8g, on a machine"
            + " that has as much, or part the job: each combination that governs, and each place"
            + " of a moving load, takes room in the workbook.",
        most / (double) (1L << 30));
  }

  @Override
  public int handleExecutionException(
      Exception fault, CommandLine commandLine, ParseResult parseResult) {
    PrintWriter err = commandLine.getErr();
    err.println(message(commandLine.getCommandSpec().qualifiedName(), fault));
    if (trace.getAsBoolean()) {
      fault.printStackTrace(err);
    }
    err.flush();
    return ExitCode.OWN_FAULT;
  }
}
