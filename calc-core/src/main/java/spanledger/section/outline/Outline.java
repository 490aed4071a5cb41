package spanledger.section.outline;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * The outline of an extrusion: one outer ring and any holes.
 *
 * <p>Whatever way the rings are given, the outer ring turns to the left and holes turn to the
 * right, so that the material is to the left of every edge.
 *
 * @param outer the outer ring
 * @param holes the rings of the holes
 */
public record Outline(Ring outer, List<Ring> holes) {

  /**
   * Checks that the rings bound a section.
   *
   * @throws InvalidOutlineException naming the place of each crossing, touch or misplaced hole
   */
  public Outline {
    outer = outer.turningLeft(true);
    holes = holes.stream().map(hole -> hole.turningLeft(false)).toList();
    List<OutlineFault> faults = OutlineFaults.of(outer, holes);
    if (!faults.isEmpty()) {
      throw new InvalidOutlineException(faults);
    }
  }

  /** The outline with the given holes. */
  public static Outline of(Ring outer, Ring... holes) {
    return new Outline(outer, List.of(holes));
  }

  /** The outer ring, then the holes. */
  public List<Ring> rings() {
    return Stream.concat(Stream.of(outer), holes.stream()).toList();
  }

  /** All edges, ring after ring. */
  public List<Edge> edges() {
    return rings().stream().flatMap(ring -> ring.edges().stream()).toList();
  }

  /** The outline after a similarity. */
  public Outline moved(Similarity similarity) {
    return new Outline(
        outer.moved(similarity), holes.stream().map(hole -> hole.moved(similarity)).toList());
  }

  /**
   * Whether a point lies in the material. Within 0.05 % of the radius of an arc it may be taken for
   * in or out.
   */
  public boolean encloses(Point point) {
    return OutlineFaults.flattened(this)
        .contains(new GeometryFactory().createPoint(new Coordinate(point.y(), point.z())));
  }

  /** The named faces: each run of neighbouring edges of one name, in order of rings and travel. */
  public List<Face> faces() {
    List<Face> faces = new ArrayList<>();
    List<Ring> rings = rings();
    for (int r = 0; r < rings.size(); r++) {
      faces.addAll(facesOf(rings.get(r).edges(), r));
    }
    return faces;
  }

  /** The faces of one name. */
  public List<Face> faces(String name) {
    return faces().stream().filter(face -> face.name().equals(name)).toList();
  }

  private static List<Face> facesOf(List<Edge> edges, int ring) {
    int n = edges.size();
    int start = 0;
    // A face may run over the seam of the ring.
    while (start < n && edges.get(start).face().equals(edges.get((start + n - 1) % n).face())) {
      start++;
    }
    start %= n;
    List<Face> faces = new ArrayList<>();
    List<Edge> run = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Edge edge = edges.get((start + i) % n);
      if (!run.isEmpty() && !run.get(0).face().equals(edge.face())) {
        faces.add(new Face(run.get(0).face(), ring, run));
        run = new ArrayList<>();
      }
      run.add(edge);
    }
    faces.add(new Face(run.get(0).face(), ring, run));
    return faces.stream().filter(face -> !face.name().isEmpty()).toList();
  }

  /**
   * The largest dimension of the box around all corners, mm; the scale that tolerances are relative
   * to.
   */
  double size() {
    return sizeOf(outer);
  }

  static double sizeOf(Ring ring) {
    Extent y = Extent.of(ring.edges(), new Point(1, 0));
    Extent z = Extent.of(ring.edges(), new Point(0, 1));
    return Math.max(y.greatest() - y.least(), z.greatest() - z.least());
  }
}
