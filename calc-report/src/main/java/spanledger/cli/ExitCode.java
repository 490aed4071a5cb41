package spanledger.cli;

/** The exit codes of the command line; scripts rely on them. */
public final class ExitCode {

  /** Every check passes. */
  public static final int ALL_PASS = 0;

  /** At least one check fails or is not checked. */
  public static final int NOT_ALL_PASS = 1;

  /** The input or the command line is wrong. */
  public static final int BAD_INPUT = 2;

  /** A fault of the program itself. */
  public static final int OWN_FAULT = 3;

  private ExitCode() {}
}
