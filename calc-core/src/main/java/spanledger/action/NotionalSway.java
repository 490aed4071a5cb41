package spanledger.action;

import java.util.ArrayList;
import java.util.List;
import spanledger.frame.Vector;

/**
 * Level forces that stand for a frame out of plumb.
 *
 * @param level their global direction, of length 1
 * @param fraction level force per downward force
 */
record NotionalSway(Vector level, double fraction) {

  /** The level loads that belong to loads given in global axes; others bring none. */
  List<SegmentLoad> of(List<SegmentLoad> vertical) {
    List<SegmentLoad> loads = new ArrayList<>();
    for (SegmentLoad load : vertical) {
      double share = -load.direction().z() * fraction;
      if (load.axes() == LoadAxes.GLOBAL && share != 0) {
        loads.add(load.turned(level, share));
      }
    }
    return loads;
  }
}
