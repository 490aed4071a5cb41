package spanledger.section.plate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spanledger.section.outline.Outline;

/**
 * The plates of a section.
 *
 * @param plates in the order of the outline
 * @param doubts what the recognition could not place
 */
public record Plates(List<Plate> plates, List<PlateDoubt> doubts) {

  public Plates {
    plates = List.copyOf(plates);
    doubts = List.copyOf(doubts);
  }

  /**
   * Recognises the plates of an outline. Whatever it is unsure about it says, in the plate or as a
   * doubt.
   */
  public static Plates of(Outline outline) {
    return PlateRecognition.recognise(outline);
  }

  /**
   * The plates with some replaced by the user's: a plate of the same name takes the place of the
   * recognised one, others are added. The user answers for the whole, so doubts are settled.
   *
   * @param own the user's plates
   */
  public Plates overriddenBy(List<Plate> own) {
    Map<String, Plate> byName = new LinkedHashMap<>();
    plates.forEach(plate -> byName.put(plate.name(), plate));
    own.forEach(plate -> byName.put(plate.name(), plate));
    return new Plates(new ArrayList<>(byName.values()), List.of());
  }

  /** The plates without those of the given names, for what the user says is none. */
  public Plates without(List<String> names) {
    return new Plates(
        plates.stream().filter(plate -> !names.contains(plate.name())).toList(), doubts);
  }

  /** Whether nothing is in doubt. */
  public boolean isSure() {
    return doubts.isEmpty()
        && plates.stream().allMatch(plate -> plate.certainty() instanceof Certainty.Sure);
  }

  /** b/t of the most slender internal plate along z, 0 if there is none. */
  public double webSlenderness() {
    return largest(
        plates.stream().filter(p -> p.kind() == PlateKind.INTERNAL && p.isUpright()).toList());
  }

  /** b/t of the most slender internal plate along y, 0 if there is none. */
  public double innerFlangeSlenderness() {
    return largest(
        plates.stream().filter(p -> p.kind() == PlateKind.INTERNAL && !p.isUpright()).toList());
  }

  /**
   * b/t of the most slender outstand; edges with lips or bulbs count as free until the user says
   * otherwise.
   */
  public double outstandSlenderness() {
    return largest(
        plates.stream()
            .filter(p -> p.kind() != PlateKind.INTERNAL && p.kind() != PlateKind.ROUND)
            .toList());
  }

  /** D/t of a round tube, 0 if it is none. */
  public double roundSlenderness() {
    return largest(plates.stream().filter(p -> p.kind() == PlateKind.ROUND).toList());
  }

  private static double largest(List<Plate> some) {
    return some.stream().mapToDouble(Plate::slenderness).max().orElse(0);
  }
}
