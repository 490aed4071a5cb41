package spanledger.action;

import java.util.List;

/**
 * A load that may stand anywhere along some paths, on one of them at a time.
 *
 * @param name unique in its job
 * @param figure the figure that gives the size of each force, N
 * @param footprint its parts
 * @param paths where it may stand
 */
public record MovingLoad(String name, Figure figure, Footprint footprint, List<LoadPath> paths) {

  public MovingLoad {
    paths = List.copyOf(paths);
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
    return path.placed(footprint, at, figure.id(), figure.value());
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
