package spanledger.workbook.layout;

import spanledger.provenance.Confidence;
import spanledger.provenance.Source;

/** Sources as they are printed beside numbers and formulas. */
final class SourceText {

  private SourceText() {}

  /** The citation and how far it can be trusted. */
  static String of(Source source) {
    return source.confidence() == Confidence.PUBLISHED
        ? source.citation()
        : source.citation() + " (" + source.confidence().words() + ")";
  }
}
