package spanledger.job.dxf;

/** Something in a drawing that cannot be read; caught where the entity is read. */
final class DxfFormatException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final int line;
  private final String expected;

  DxfFormatException(int line, String found, String expected) {
    super(found);
    this.line = line;
    this.expected = expected;
  }

  void report(DxfLog log) {
    log.error(
        line,
        String.valueOf(getMessage()),
        expected,
        "correct the drawing and save it again as DXF, ASCII");
  }
}
