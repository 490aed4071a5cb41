package spanledger.cli;

import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/**
 * Turns an unexpected exception into one message instead of a stack trace. With the environment
 * variable {@code SPANLEDGER_TRACE} set, the stack trace follows the message.
 */
final class FaultMessage implements IExecutionExceptionHandler {

  @Override
  public int handleExecutionException(
      Exception fault, CommandLine commandLine, ParseResult parseResult) {
    PrintWriter err = commandLine.getErr();
    err.println(
        "spanledger: fault of the program in '"
            + commandLine.getCommandSpec().qualifiedName()
            + "': "
            + fault
            + System.lineSeparator()
            + "Nothing was proved. Please report this message with the command and its input"
            + " (SPANLEDGER_TRACE=1 adds the details).");
    if (System.getenv("SPANLEDGER_TRACE") != null) {
      fault.printStackTrace(err);
    }
    err.flush();
    return ExitCode.OWN_FAULT;
  }
}
