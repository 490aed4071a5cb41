package spanledger.section.plate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a user changed in the plates that were recognised.
 *
 * @param changed names of plates that differ from the recognised ones of the same name
 * @param added names of plates that were not recognised
 * @param removed recognised plates that the user took away
 * @param settled doubts of the recognition that the user answers for
 */
public record PlateEdits(
    Set<String> changed, Set<String> added, List<Plate> removed, List<PlateDoubt> settled) {

  public PlateEdits {
    changed = Set.copyOf(changed);
    added = Set.copyOf(added);
    removed = List.copyOf(removed);
    settled = List.copyOf(settled);
  }

  /**
   * Compares the plates in use with the recognised ones.
   *
   * @param recognised what the program found
   * @param used what is used
   */
  public static PlateEdits between(Plates recognised, Plates used) {
    Map<String, Plate> before = new HashMap<>();
    recognised.plates().forEach(plate -> before.put(plate.name(), plate));
    Set<String> changed = new HashSet<>();
    Set<String> added = new HashSet<>();
    for (Plate plate : used.plates()) {
      @Nullable Plate found = before.remove(plate.name());
      if (found == null) {
        added.add(plate.name());
      } else if (!found.equals(plate)) {
        changed.add(plate.name());
      }
    }
    List<Plate> removed =
        recognised.plates().stream().filter(plate -> before.containsKey(plate.name())).toList();
    List<PlateDoubt> settled = new ArrayList<>(recognised.doubts());
    settled.removeAll(used.doubts());
    return new PlateEdits(changed, added, removed, settled);
  }

  /** Whether the user changed nothing. */
  public boolean isEmpty() {
    return changed.isEmpty() && added.isEmpty() && removed.isEmpty() && settled.isEmpty();
  }

  /** "changed by the user", "added by the user" or nothing. */
  public String words(Plate plate) {
    if (added.contains(plate.name())) {
      return "added by the user";
    }
    return changed.contains(plate.name()) ? "changed by the user" : "";
  }
}
