package spanledger.section.feature;

import spanledger.section.outline.Outline;
import spanledger.section.outline.Point;

/**
 * A groove that takes the key of a bracket.
 *
 * @param at middle of its mouth, level with the face, mm
 * @param width half way down, mm
 * @param depth mm
 */
public record KeyGroove(Point at, double width, double depth) {

  static KeyGroove measured(Outline outline, Point at, Point outward) {
    Slot.Recess recess = Slot.Recess.at(outline, at, outward);
    double width = recess.widthAt(recess.depth() / 2);
    if (!Double.isFinite(width)) {
      throw new MissingFeatureException("no groove at " + at);
    }
    return new KeyGroove(at, width, recess.depth());
  }
}
