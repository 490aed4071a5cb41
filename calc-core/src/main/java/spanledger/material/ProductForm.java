package spanledger.material;

/** The form in which an extrusion is made; strengths are published by form. */
public enum ProductForm {
  OPEN_PROFILE("open profile"),
  HOLLOW_PROFILE("hollow profile"),
  TUBE("tube"),
  ROD_OR_BAR("rod or bar");

  private final String words;

  ProductForm(String words) {
    this.words = words;
  }

  /** The form in words. */
  public String words() {
    return words;
  }

  /** The form in words with its article, for use in a sentence. */
  String withArticle() {
    return (this == OPEN_PROFILE ? "an " : "a ") + words;
  }
}
