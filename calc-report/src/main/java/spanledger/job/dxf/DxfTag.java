package spanledger.job.dxf;

/**
 * A group of a DXF file: a code that says what follows, and the value.
 *
 * @param code the group code
 * @param value the value, without spaces around it
 * @param line the line of the value, from 1
 */
record DxfTag(int code, String value, int line) {

  /** Whether the group is of this code and value. */
  boolean is(int wantedCode, String wantedValue) {
    return code == wantedCode && value.equals(wantedValue);
  }
}
