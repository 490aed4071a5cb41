package spanledger.action;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A load that may stand anywhere along some paths, on one of them at a time.
 *
 * @param name unique in its job
 * @param figure the figure that gives the size of each force, N
 * @param footprint its parts
 * @param paths where it may stand
 * @param sway the notional sway that it brings along, if any
 */
public record MovingLoad(
    String name,
    Figure figure,
    Footprint footprint,
    List<LoadPath> paths,
    Optional<NotionalSway> sway) {

  public MovingLoad {
    paths = List.copyOf(paths);
  }

  /** A load without notional sway. */
  public MovingLoad(String name, Figure figure, Footprint footprint, List<LoadPath> paths) {
    this(name, figure, footprint, paths, Optional.empty());
  }

  /** A single force. */
  public MovingLoad(String name, Figure figure, List<LoadPath> paths) {
    this(name, figure, new Footprint.Point(), paths);
  }

  /**
   * The load standing on a path.
   *
   * @param at mm along the path: the place of a single force, the middle of a patch, the foremost
   *     force of a train
   * @return what it puts on the segments
   */
  public List<SegmentLoad> placed(LoadPath path, double at) {
    List<SegmentLoad> placed = path.placed(footprint, at, figure.id(), figure.value());
    if (sway.isEmpty()) {
      return placed;
    }
    List<SegmentLoad> all = new ArrayList<>(placed);
    all.addAll(sway.get().of(placed));
    return all;
  }

  /** This with the notional sway of what weighs down in it; empty if nothing does. */
  Optional<MovingLoad> swayed(String words, NotionalSway way) {
    boolean down =
        paths.stream()
            .flatMap(path -> path.lanes().stream())
            .anyMatch(lane -> lane.direction().z() < 0);
    return down
        ? Optional.of(
            new MovingLoad(name + ", " + words, figure, footprint, paths, Optional.of(way)))
        : Optional.empty();
  }

  /** The first place on a path, mm along it. */
  public double first(LoadPath path) {
    return footprint instanceof Footprint.Patch patch
        ? Math.min(patch.length(), path.length()) / 2
        : 0;
  }

  /** The last place on a path, mm along it. */
  public double last(LoadPath path) {
    return footprint instanceof Footprint.Patch
        ? path.length() - first(path)
        : path.length() + footprint.reach();
  }
}
