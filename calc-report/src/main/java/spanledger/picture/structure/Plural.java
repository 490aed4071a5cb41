package spanledger.picture.structure;

/** Words with numbers. */
final class Plural {

  private Plural() {}

  /** That sizes were left out, as a sentence of its own; empty if none was. */
  static String leftOut(int sizes) {
    if (sizes == 0) {
      return "";
    }
    return sizes == 1
        ? " One size found no room."
        : " " + sizes + " sizes found no room; see the sheet Nodes and supports.";
  }
}
