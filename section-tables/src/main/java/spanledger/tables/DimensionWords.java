package spanledger.tables;

import java.util.Map;
import spanledger.quantity.Dimension;

/** What users call a dimension, and how they would write a value of it. */
final class DimensionWords {

  private record Words(String name, String example) {}

  private static final Map<Dimension, Words> WORDS =
      Map.ofEntries(
          Map.entry(
              Dimension.NONE, new Words("a plain number, ratio or angle", "1.5, 1/200, 30 deg")),
          Map.entry(Dimension.LENGTH, new Words("a length", "1200 mm")),
          Map.entry(Dimension.AREA, new Words("an area", "480 mm2")),
          Map.entry(Dimension.SECTION_MODULUS, new Words("a section modulus", "12.4 cm3")),
          Map.entry(Dimension.SECOND_MOMENT, new Words("a second moment of area", "61 cm4")),
          Map.entry(Dimension.WARPING_CONSTANT, new Words("a warping constant", "5200 cm6")),
          Map.entry(Dimension.FORCE, new Words("a force", "1.1 kN")),
          Map.entry(
              Dimension.MOMENT,
              new Words("a moment or rotational stiffness", "2.5 kN*m or 12 kN*m/rad")),
          Map.entry(Dimension.STRESS, new Words("a stress, modulus or area load", "2.5 kN/m2")),
          Map.entry(Dimension.LINE_LOAD, new Words("a line load or spring stiffness", "0.35 kN/m")),
          Map.entry(Dimension.MASS, new Words("a mass", "12 kg")),
          Map.entry(Dimension.DENSITY, new Words("a density", "2700 kg/m3")),
          Map.entry(Dimension.MASS_PER_LENGTH, new Words("a mass per length", "1.8 kg/m")),
          Map.entry(Dimension.whole(0, 0, 0, 1), new Words("a time", "2 s")),
          Map.entry(Dimension.whole(0, 0, 0, -1), new Words("a frequency", "5 Hz")));

  private DimensionWords() {}

  /** The name with article, for example {@code a force}. */
  static String name(Dimension dimension) {
    Words words = WORDS.get(dimension);
    return words == null ? "a quantity in " + dimension.coreUnit() : words.name();
  }

  /** The name with an example, for example {@code a force, for example 1.1 kN}. */
  static String nameAndExample(Dimension dimension) {
    Words words = WORDS.get(dimension);
    return name(dimension) + (words == null ? "" : ", for example " + words.example());
  }
}
