package spanledger.assembly;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Collects what is wrong with an assembly, so that all of it is told at once. */
final class Problems {

  private final List<AssemblyProblem> found = new ArrayList<>();

  /** A place in the assembly under which problems are reported. */
  record At(Problems problems, List<String> path) {

    /** A place below this one. */
    At at(Object... further) {
      List<String> longer = new ArrayList<>(path);
      Arrays.stream(further).map(String::valueOf).forEach(longer::add);
      return new At(problems, longer);
    }

    /** Reports a problem here. */
    void add(String found, String expected, String remedy) {
      problems.found.add(new AssemblyProblem(path, found, expected, remedy));
    }
  }

  At at(String kind, String name) {
    return new At(this, List.of(kind, name));
  }

  int count() {
    return found.size();
  }

  boolean isEmpty() {
    return found.isEmpty();
  }

  List<AssemblyProblem> all() {
    return List.copyOf(found);
  }

  /** A length in words: whole millimetres, or tenths where they count. */
  static String mm(double length) {
    double rounded = Math.round(length * 10) / 10.0;
    return rounded == Math.rint(rounded)
        ? String.format(Locale.ROOT, "%.0f mm", rounded)
        : String.format(Locale.ROOT, "%.1f mm", rounded);
  }

  /** An angle in words. */
  static String degrees(double angle) {
    return String.format(Locale.ROOT, "%.1f deg", Math.toDegrees(angle));
  }
}
