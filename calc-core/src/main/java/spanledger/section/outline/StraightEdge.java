package spanledger.section.outline;

/** A straight edge; see {@link Edge}. */
public record StraightEdge(Point start, Point end, String face) implements Edge {

  public StraightEdge(Point start, Point end) {
    this(start, end, "");
  }

  @Override
  public double length() {
    return start.distance(end);
  }

  @Override
  public Point at(double t) {
    return t >= 1 ? end : start.towards(end, t);
  }

  @Override
  public Point tangent(double t) {
    return end.minus(start).times(1 / length());
  }

  @Override
  public double sweep() {
    return 0;
  }

  @Override
  public Edge part(double from, double to) {
    return new StraightEdge(at(from), at(to), face);
  }

  @Override
  public Edge reversed() {
    return new StraightEdge(end, start, face);
  }

  @Override
  public Edge moved(Similarity similarity) {
    return new StraightEdge(similarity.apply(start), similarity.apply(end), face);
  }

  @Override
  public Edge named(String newFace) {
    return new StraightEdge(start, end, newFace);
  }
}
