package spanledger.job.dxf;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import spanledger.job.problem.ProblemLog;
import spanledger.section.outline.Extent;
import spanledger.section.outline.Outline;
import spanledger.section.outline.OutlineFault;
import spanledger.section.outline.PartOverlaps;
import spanledger.section.outline.Point;
import spanledger.section.outline.Similarity;

/** Reads outlines from drawings in DXF (ASCII) and finds all that is wrong with them. */
public final class DxfReader {

  /** Joining ends compares each with each. */
  private static final int MOST_EDGES = 5_000;

  private static final double LEAST_SIZE = 1;
  private static final double GREATEST_SIZE = 5000;

  private DxfReader() {}

  /**
   * What a drawing shows.
   *
   * @param pieces its pieces with their holes, mm, in the order of the drawing; at least one
   * @param sha256 the SHA-256 of the file's bytes, in hexadecimal
   */
  public record Drawing(List<Outline> pieces, String sha256) {
    public Drawing {
      pieces = List.copyOf(pieces);
    }
  }

  /**
   * Reads a drawing.
   *
   * @param path the file
   * @param options unit, layers and how exactly ends must meet
   * @param problems takes faults, by line of the drawing
   * @return the outlines, unless there are faults
   */
  public static Optional<Drawing> read(Path path, DxfOptions options, ProblemLog problems) {
    int before = problems.errors();
    DxfLog log = new DxfLog(problems);
    Optional<Drawing> drawing =
        DxfFile.load(path, log)
            .flatMap(file -> pieces(file, options, log).map(p -> new Drawing(p, file.sha256())));
    return problems.errors() > before ? Optional.empty() : drawing;
  }

  private static Optional<List<Outline>> pieces(DxfFile file, DxfOptions options, DxfLog log) {
    DxfDocument document;
    try {
      document = DxfDocument.of(file);
    } catch (DxfFormatException e) {
      e.report(log);
      return Optional.empty();
    }
    OptionalDouble unit = DxfUnits.of(document.unitCode(), options.unit(), log);
    List<DrawnEdge> drawn = new EdgeCollector(document, options.layers(), log).collect();
    if (log.log().hasErrors()) {
      return Optional.empty();
    }
    Similarity scaled = Similarity.scaling(unit.orElseThrow());
    // What is shorter than the gaps that are closed is such a gap.
    List<DrawnEdge> edges =
        drawn.stream()
            .map(edge -> edge.moved(scaled))
            .filter(edge -> edge.edge().length() > options.joinWithin())
            .toList();
    if (edges.isEmpty() || edges.size() > MOST_EDGES) {
      log.error(
          0,
          edges.isEmpty() ? "a drawing without lines and arcs" : edges.size() + " lines and arcs",
          "the outline of one section in model space",
          "draw it with lines, arcs, circles or polylines, and leave the rest out");
      return Optional.empty();
    }
    List<ChainJoiner.Chain> rings = new ChainJoiner(edges, options.joinWithin(), log).join();
    List<Outline> pieces = new RingNesting(log).pieces(rings);
    for (OutlineFault fault : PartOverlaps.of(pieces)) {
      log.error(
          0,
          "at " + fault.where() + " mm: " + fault.message(),
          "pieces that touch each other at most",
          "correct the drawing");
    }
    checkSize(pieces, log);
    return pieces.isEmpty() ? Optional.empty() : Optional.of(pieces);
  }

  private static void checkSize(List<Outline> pieces, DxfLog log) {
    double size = 0;
    for (Outline piece : pieces) {
      for (Point direction : List.of(new Point(1, 0), new Point(0, 1))) {
        Extent extent = Extent.of(piece.outer().edges(), direction);
        size = Math.max(size, extent.greatest() - extent.least());
      }
    }
    if (!pieces.isEmpty() && (size < LEAST_SIZE || size > GREATEST_SIZE)) {
      log.error(
          0,
          "an outline " + size + " mm across",
          "a section from 1 mm to 5 m across",
          "check the unit of the drawing");
    }
  }
}
