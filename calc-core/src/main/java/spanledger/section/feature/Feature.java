package spanledger.section.feature;

import java.util.LinkedHashMap;
import java.util.Map;
import spanledger.section.outline.Similarity;

/**
 * A named place of an extrusion where something can be joined to it. All sizes are measured on the
 * outline, in mm.
 */
public sealed interface Feature permits Slot, SlotLip, KeyedFace, Web {

  /** Unique in its extrusion. */
  String name();

  /** What it is, for example {@code slot lip}. */
  String kind();

  /** Its sizes by name, in a fixed order, mm. */
  Map<String, Double> sizes();

  /** The feature after a move that keeps lengths. */
  Feature moved(Similarity similarity);

  /** Sizes in order: name, size, name, size. */
  static Map<String, Double> inOrder(Object... namesAndSizes) {
    Map<String, Double> sizes = new LinkedHashMap<>();
    for (int i = 0; i + 1 < namesAndSizes.length; i += 2) {
      sizes.put((String) namesAndSizes[i], (Double) namesAndSizes[i + 1]);
    }
    return sizes;
  }
}
