package spanledger.resistance.en1999;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spanledger.resistance.member.Hole;

/** Holes by the cut that they weaken. */
final class HoleGroups {

  private HoleGroups() {}

  /** Holes of one name, in the order in which they are given. */
  static List<List<Hole>> of(List<Hole> holes) {
    Map<String, List<Hole>> groups = new LinkedHashMap<>();
    for (Hole hole : holes) {
      groups.computeIfAbsent(hole.name(), name -> new ArrayList<>()).add(hole);
    }
    return List.copyOf(groups.values());
  }
}
