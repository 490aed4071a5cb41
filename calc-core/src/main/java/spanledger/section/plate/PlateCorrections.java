package spanledger.section.plate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.section.outline.Point;
import spanledger.section.outline.Similarity;

/**
 * A user's corrections of the recognised plates.
 *
 * @param by who answers for them; empty if there are none
 * @param each the corrections
 * @param doubtsSettled whether that person says that the places in doubt need no further plates
 */
public record PlateCorrections(String by, List<PlateCorrection> each, boolean doubtsSettled) {

  /** No corrections. */
  public static final PlateCorrections NONE = new PlateCorrections("", List.of(), false);

  public PlateCorrections {
    each = List.copyOf(each);
  }

  /** Whether there is nothing to correct. */
  public boolean isEmpty() {
    return each.isEmpty() && !doubtsSettled;
  }

  /** The corrections after a move of the outline. */
  public PlateCorrections moved(Similarity similarity) {
    return new PlateCorrections(
        by, each.stream().map(one -> one.moved(similarity)).toList(), doubtsSettled);
  }

  /** Why a correction does not fit the recognised plates, with the plates there are. */
  public static Optional<String> fault(PlateCorrection edit, Plates recognised) {
    Optional<Plate> named = find(recognised, edit.plate());
    if (edit instanceof PlateCorrection.Add) {
      return named.map(p -> "\"" + p.name() + "\", a name that a recognised plate has");
    }
    Point near = near(edit);
    if (named.isEmpty()) {
      return Optional.of(
          "\"" + edit.plate() + "\", but no plate has this name" + listed(recognised));
    }
    double off = named.get().distance(near);
    return off <= named.get().thickness()
        ? Optional.empty()
        : Optional.of(
            "the point "
                + near
                + ", but plate "
                + edit.plate()
                + " runs from "
                + named.get().start()
                + " to "
                + named.get().end());
  }

  /**
   * The plates as corrected.
   *
   * @throws IllegalArgumentException if a correction does not fit
   */
  public Plates applied(Plates recognised) {
    List<Plate> plates = new ArrayList<>(recognised.plates());
    for (PlateCorrection edit : each) {
      fault(edit, recognised)
          .ifPresent(
              words -> {
                throw new IllegalArgumentException("Correction of plates: " + words + ".");
              });
      if (edit instanceof PlateCorrection.Add add) {
        plates.add(add.added());
      } else if (edit instanceof PlateCorrection.Drop) {
        plates.removeIf(plate -> plate.name().equals(edit.plate()));
      } else {
        plates.replaceAll(plate -> plate.name().equals(edit.plate()) ? edited(plate, edit) : plate);
      }
    }
    return new Plates(plates, doubtsSettled ? List.of() : recognised.doubts());
  }

  private static Plate edited(Plate plate, PlateCorrection edit) {
    return edit instanceof PlateCorrection.Change change
        ? new Plate(
            plate.name(),
            change.kind().orElse(plate.kind()),
            plate.start(),
            plate.end(),
            plate.bulge(),
            change.width().orElse(plate.width()),
            change.thickness().orElse(plate.thickness()),
            Certainty.sure())
        : plate.with(plate.kind(), Certainty.sure());
  }

  private static Point near(PlateCorrection edit) {
    if (edit instanceof PlateCorrection.Confirm confirm) {
      return confirm.near();
    }
    if (edit instanceof PlateCorrection.Change change) {
      return change.near();
    }
    return ((PlateCorrection.Drop) edit).near();
  }

  private static Optional<Plate> find(Plates recognised, String name) {
    return recognised.plates().stream().filter(plate -> plate.name().equals(name)).findFirst();
  }

  private static String listed(Plates recognised) {
    List<String> places =
        recognised.plates().stream()
            .map(plate -> plate.name() + " at " + plate.midpoint())
            .toList();
    return places.isEmpty() ? "; none was recognised" : "; there are " + String.join(", ", places);
  }
}
