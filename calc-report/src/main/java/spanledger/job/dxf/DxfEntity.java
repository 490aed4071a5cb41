package spanledger.job.dxf;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import spanledger.job.source.Quoted;
import spanledger.section.outline.Point;

/**
 * An entity of a drawing.
 *
 * @param type for example {@code LINE}
 * @param line the line where it begins
 * @param tags its groups
 * @param vertices the vertices that follow a POLYLINE
 */
record DxfEntity(String type, int line, List<DxfTag> tags, List<DxfEntity> vertices) {

  private static final int LAYER = 8;

  DxfEntity {
    tags = List.copyOf(tags);
    vertices = List.copyOf(vertices);
  }

  /** Its layer in small letters; layers are told apart without regard to case. */
  String layer() {
    return text(LAYER, "0").toLowerCase(Locale.ROOT);
  }

  /** The text of a group. */
  String text(int code, String otherwise) {
    return tags.stream()
        .filter(tag -> tag.code() == code)
        .map(DxfTag::value)
        .findFirst()
        .orElse(otherwise);
  }

  /** The number of a group, if it has that group. */
  OptionalDouble number(int code) {
    for (DxfTag tag : tags) {
      if (tag.code() == code) {
        return OptionalDouble.of(number(tag));
      }
    }
    return OptionalDouble.empty();
  }

  double number(int code, double otherwise) {
    return number(code).orElse(otherwise);
  }

  /** The number of a group that must be there. */
  double required(int code) {
    return number(code)
        .orElseThrow(
            () -> new DxfFormatException(line, type + " without group " + code, "a whole " + type));
  }

  int flags() {
    return (int) number(70, 0);
  }

  /** A point from two groups that must be there. */
  Point point(int codeOfX) {
    return new Point(required(codeOfX), required(codeOfX + 10));
  }

  static double number(DxfTag tag) {
    try {
      double value = Double.parseDouble(tag.value());
      if (Double.isFinite(value)) {
        return value;
      }
    } catch (NumberFormatException e) {
      // Reported below.
    }
    throw new DxfFormatException(
        tag.line(), Quoted.text(tag.value()) + " in group " + tag.code(), "a number");
  }

  /** What it is and where, for messages. */
  String words() {
    return type + " on layer " + Quoted.text(text(LAYER, "0"));
  }
}
