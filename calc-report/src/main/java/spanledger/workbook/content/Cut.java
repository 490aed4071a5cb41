package spanledger.workbook.content;

import spanledger.envelope.Instance;
import spanledger.envelope.Station;

/**
 * A cut under a governing combination.
 *
 * @param instance the combination
 * @param station the cut
 */
record Cut(Instance instance, Station station) {

  /** What tells it from other cuts. */
  String key() {
    return KeptCases.key(instance) + "|" + station.segment().index() + "|" + station.x();
  }
}
