package spanledger.job;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import spanledger.frame.Node;
import spanledger.frame.Vector;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Quoted;
import spanledger.quantity.Dimension;

/** Decodes the nodes and finds those that stand at the same place. */
final class NodeDecoder {

  /** The farthest place from the origin along an axis, mm. */
  private static final double FARTHEST = 1e6;

  /** A cube of the grid by which near nodes are found. */
  private record Cell(long x, long y, long z) {
    static Cell of(Vector place) {
      return new Cell(
          (long) Math.floor(place.x() / Tolerance.SAME_PLACE),
          (long) Math.floor(place.y() / Tolerance.SAME_PLACE),
          (long) Math.floor(place.z() / Tolerance.SAME_PLACE));
    }
  }

  private final Reading reading;
  private final Values values;
  private final Map<Cell, Located.Entry> occupied = new HashMap<>();
  private final Map<String, Vector> places = new HashMap<>();

  NodeDecoder(Reading reading) {
    this.reading = reading;
    this.values = new Values(reading);
  }

  /**
   * Decodes the nodes given by hand.
   *
   * @param names the nodes of the assembly; takes the others
   */
  Names<Node> decode(Located nodes, Names<Node> names) {
    for (Node made : names.usable()) {
      occupied.put(Cell.of(made.place()), names.entry(made.name()));
      places.put(made.name(), made.place());
    }
    for (Located.Entry entry : reading.named(nodes)) {
      if (names.isTaken(entry)) {
        continue;
      }
      Optional<Vector> place =
          values.vector(entry.value(), Dimension.LENGTH).filter(at -> isNear(entry, at));
      boolean free = place.map(at -> takePlace(entry, at)).orElse(false);
      names.add(entry, place.filter(at -> free).map(at -> new Node(entry.key(), at)));
    }
    return names;
  }

  private boolean isNear(Located.Entry entry, Vector place) {
    double farthest =
        Math.max(Math.abs(place.x()), Math.max(Math.abs(place.y()), Math.abs(place.z())));
    if (farthest > FARTHEST) {
      reading.error(
          entry.value(),
          "a place more than 1 km from the origin",
          "coordinates of one structure",
          "check the units, or move the origin to the structure");
      return false;
    }
    return true;
  }

  /** Whether no other node has taken the place already; reports one that has. */
  private boolean takePlace(Located.Entry entry, Vector place) {
    Cell own = Cell.of(place);
    for (long x = own.x() - 1; x <= own.x() + 1; x++) {
      for (long y = own.y() - 1; y <= own.y() + 1; y++) {
        for (long z = own.z() - 1; z <= own.z() + 1; z++) {
          Located.Entry other = occupied.get(new Cell(x, y, z));
          if (other != null && distance(other, place) <= Tolerance.SAME_PLACE) {
            reportSamePlace(entry, other);
            return false;
          }
        }
      }
    }
    occupied.put(own, entry);
    places.put(entry.key(), place);
    return true;
  }

  private double distance(Located.Entry other, Vector place) {
    return places.getOrDefault(other.key(), Vector.ZERO).minus(place).norm();
  }

  private void reportSamePlace(Located.Entry entry, Located.Entry other) {
    reading.error(
        entry.value(),
        "the place of node "
            + Quoted.text(other.key())
            + " (line "
            + other.keyPlace().line()
            + ") once more",
        "nodes more than 1 mm apart",
        "use " + Quoted.text(other.key()) + " for both, or correct the coordinates");
  }
}
