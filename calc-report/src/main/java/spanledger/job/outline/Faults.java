package spanledger.job.outline;

import spanledger.job.reading.Reading;
import spanledger.job.source.Located;
import spanledger.section.outline.OutlineFault;

/** Puts the faults of outlines into the words of problem reports. */
final class Faults {

  private Faults() {}

  /** Reports a fault of rings at a value; its message ends with how to mend it. */
  static void report(Reading reading, Located value, OutlineFault fault) {
    report(reading, value, fault, "one outer ring with holes inside it, no two of which meet");
  }

  /** Reports a fault at a value. */
  static void report(Reading reading, Located value, OutlineFault fault, String expected) {
    String message = fault.message();
    int end = message.indexOf(". ");
    String what = end < 0 ? message : message.substring(0, end);
    String remedy = end < 0 ? "correct the outline." : message.substring(end + 2);
    reading.error(
        value,
        "at " + fault.where() + " mm: " + what,
        expected,
        lowerFirst(remedy.endsWith(".") ? remedy.substring(0, remedy.length() - 1) : remedy));
  }

  private static String lowerFirst(String text) {
    return Character.toLowerCase(text.charAt(0)) + text.substring(1);
  }
}
