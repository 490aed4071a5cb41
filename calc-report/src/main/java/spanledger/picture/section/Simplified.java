package spanledger.picture.section;

import java.util.ArrayList;
import java.util.List;
import spanledger.picture.Spot;

/** Lines with fewer places that look the same on paper. */
final class Simplified {

  /** What nobody sees. */
  private static final double INVISIBLE = 0.08;

  /** How far ahead places may be left out together. */
  private static final int MOST = 60;

  private Simplified() {}

  /** Leaves out places that are nearer than a hair to the line between those kept. */
  static List<Spot> of(List<Spot> line) {
    List<Spot> kept = new ArrayList<>();
    kept.add(line.get(0));
    int at = 0;
    while (at < line.size() - 1) {
      int next = at + 1;
      while (next + 1 < line.size() && next - at < MOST && isStraight(line, at, next + 1)) {
        next++;
      }
      kept.add(line.get(next));
      at = next;
    }
    return kept;
  }

  private static boolean isStraight(List<Spot> line, int from, int to) {
    Spot a = line.get(from);
    Spot b = line.get(to);
    double length = a.distance(b);
    for (int i = from + 1; i < to; i++) {
      Spot c = line.get(i);
      double off =
          length == 0
              ? a.distance(c)
              : Math.abs((b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x()))
                  / length;
      if (off > INVISIBLE || a.distance(c) > length) {
        return false;
      }
    }
    return true;
  }
}
