package spanledger.workbook.content;

import spanledger.envelope.Instance;
import spanledger.envelope.Station;

/**
 * A cut under a governing combination.
 *
 * @param instance the combination
 * @param station the cut
 * @param bySum whether the sum over load cases is shown although a state is the result
 */
record Cut(Instance instance, Station station, boolean bySum) {

  /** One that shows the result: the state of the combination, if it was solved as one. */
  Cut(Instance instance, Station station) {
    this(instance, station, false);
  }

  /** What tells it from other cuts. */
  String key() {
    return KeptCases.key(instance)
        + "|"
        + station.segment().index()
        + "|"
        + station.x()
        + (bySum ? "|sum" : "");
  }

  /** The combination in words. */
  String words() {
    return instance.words() + (bySum ? " (sum over the cases)" : "");
  }
}
