package spanledger.procedure;

/**
 * The values an input may take, in core units.
 *
 * @param least the least value; may be negative infinity
 * @param leastIncluded whether the least value itself is allowed
 * @param greatest the greatest value, allowed if finite; may be infinity
 */
public record Domain(double least, boolean leastIncluded, double greatest) {

  /** Any finite number. */
  public static final Domain ANY =
      new Domain(Double.NEGATIVE_INFINITY, false, Double.POSITIVE_INFINITY);

  /** Greater than zero. */
  public static final Domain POSITIVE = new Domain(0, false, Double.POSITIVE_INFINITY);

  /** Zero or greater. */
  public static final Domain NOT_NEGATIVE = new Domain(0, true, Double.POSITIVE_INFINITY);

  /** From zero to one, both included. */
  public static final Domain FRACTION = new Domain(0, true, 1);

  public Domain {
    if (!(least < greatest)) {
      throw new IllegalArgumentException(
          "A domain must reach from less to more, found " + least + " to " + greatest + ".");
    }
  }

  /** Whether the value is in the domain; never for a number that is not finite. */
  public boolean contains(double value) {
    return Double.isFinite(value)
        && (leastIncluded ? value >= least : value > least)
        && value <= greatest;
  }

  /** The domain in words, to complete "must be ...". */
  public String words() {
    boolean below = Double.isFinite(least);
    boolean above = Double.isFinite(greatest);
    if (!below && !above) {
      return "any finite number";
    }
    String lower =
        below ? (leastIncluded ? "at least " : "greater than ") + NumberText.exact(least) : "";
    String upper = above ? "at most " + NumberText.exact(greatest) : "";
    return lower + (below && above ? " and " : "") + upper;
  }
}
