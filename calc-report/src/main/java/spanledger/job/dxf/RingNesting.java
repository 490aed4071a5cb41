package spanledger.job.dxf;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import spanledger.section.outline.InvalidOutlineException;
import spanledger.section.outline.Outline;
import spanledger.section.outline.Point;
import spanledger.section.outline.Ring;

/** Sorts rings into pieces: a ring within a ring is a hole, a ring within a hole a piece again. */
final class RingNesting {

  private final DxfLog log;

  RingNesting(DxfLog log) {
    this.log = log;
  }

  /**
   * A ring with what it encloses.
   *
   * @param filled the ring without holes
   */
  private record Filled(ChainJoiner.Chain chain, Outline filled) {

    boolean encloses(Filled other) {
      Point inside = other.chain.ring().edges().get(0).at(0.5);
      return !other.equals(this) && filled.encloses(inside);
    }

    double area() {
      return Math.abs(chain.ring().signedArea());
    }
  }

  /** The pieces in the order of the drawing; empty if there are faults, which are reported. */
  List<Outline> pieces(List<ChainJoiner.Chain> rings) {
    List<Filled> all = new ArrayList<>();
    for (ChainJoiner.Chain chain : rings) {
      filled(chain).ifPresent(all::add);
    }
    if (all.size() < rings.size()) {
      return List.of();
    }
    if (cross(all)) {
      return List.of();
    }
    List<Outline> pieces = new ArrayList<>();
    boolean sound = true;
    for (Filled outer : all) {
      if (depth(outer, all) % 2 == 0) {
        List<Filled> holes =
            all.stream()
                .filter(ring -> parent(ring, all).filter(outer::equals).isPresent())
                .toList();
        Optional<Outline> piece = piece(outer, holes);
        piece.ifPresent(pieces::add);
        sound &= piece.isPresent();
      }
    }
    return sound ? pieces : List.of();
  }

  /** Two rings that each seem to lie within the other cross; other crossings are found later. */
  private boolean cross(List<Filled> all) {
    boolean found = false;
    for (int b = 0; b < all.size(); b++) {
      for (int a = 0; a < b; a++) {
        if (all.get(a).encloses(all.get(b)) && all.get(b).encloses(all.get(a))) {
          found = true;
          log.error(
              all.get(b).chain().first().line(),
              "a ring that crosses the one that begins with the "
                  + all.get(a).chain().first().words()
                  + " on line "
                  + all.get(a).chain().first().line(),
              "rings that neither cross nor touch themselves or each other",
              "correct the drawing");
        }
      }
    }
    return found;
  }

  private static int depth(Filled ring, List<Filled> all) {
    return (int) all.stream().filter(other -> other.encloses(ring)).count();
  }

  /** The smallest ring around a hole. */
  private static Optional<Filled> parent(Filled ring, List<Filled> all) {
    return depth(ring, all) % 2 == 0
        ? Optional.empty()
        : all.stream()
            .filter(other -> other.encloses(ring))
            .min(Comparator.comparingDouble(Filled::area));
  }

  private Optional<Filled> filled(ChainJoiner.Chain chain) {
    return outline(chain.ring(), List.of(), List.of(chain)).map(o -> new Filled(chain, o));
  }

  private Optional<Outline> piece(Filled outer, List<Filled> holes) {
    List<ChainJoiner.Chain> chains = new ArrayList<>(List.of(outer.chain()));
    holes.forEach(hole -> chains.add(hole.chain()));
    return outline(
        outer.chain().ring(), holes.stream().map(hole -> hole.chain().ring()).toList(), chains);
  }

  private Optional<Outline> outline(Ring outer, List<Ring> holes, List<ChainJoiner.Chain> chains) {
    try {
      return Optional.of(new Outline(outer, holes));
    } catch (InvalidOutlineException e) {
      e.faults()
          .forEach(
              fault ->
                  log.error(
                      chains.get(fault.ring()).first().line(),
                      "at "
                          + fault.where()
                          + " mm, in the chain that begins with this "
                          + chains.get(fault.ring()).first().words()
                          + ": "
                          + fault.message(),
                      "rings that neither cross nor touch themselves or each other",
                      "correct the drawing"));
      return Optional.empty();
    }
  }
}
