package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import spanledger.joint.BasePlateFoot;
import spanledger.joint.FacePlace;
import spanledger.joint.PlateBending;

/**
 * A line beside the stem of a base plate about which anchors bend it: through the point of the stem
 * nearest to an anchor, square to the way to it.
 *
 * @param arms how far each anchor lies beyond the line, mm; 0 for those that do not
 * @param width of the plate along the line that bends: within 45 degrees of each anchor, mm
 */
record PlateLine(List<Double> arms, double width) {

  /** Nearer than this a point is on the stem, mm. */
  private static final double ON_STEM = 1e-6;

  /** Lines closer than this, mm or as cosine, are one. */
  private static final double SAME = 1e-6;

  PlateLine {
    arms = List.copyOf(arms);
  }

  private record Stretch(double from, double to) {}

  private record Line(double x, double y, double outX, double outY) {

    double beyond(FacePlace at) {
      return (at.a() - x) * outX + (at.b() - y) * outY;
    }

    double along(FacePlace at) {
      return (at.b() - y) * outX - (at.a() - x) * outY;
    }

    boolean isSame(Line other) {
      return Math.abs(outX - other.outX) < SAME
          && Math.abs(outY - other.outY) < SAME
          && Math.abs((other.x - x) * outX + (other.y - y) * outY) < SAME;
    }
  }

  /** The lines of a plate, none twice; none for anchors under the stem. */
  static List<PlateLine> of(BasePlateFoot plate, PlateBending bending) {
    List<Line> lines = new ArrayList<>();
    double middleX = -plate.offset().x();
    double middleY = -plate.offset().y();
    for (FacePlace anchor : plate.anchors()) {
      double x = nearest(anchor.a(), middleX, bending.stemX() / 2);
      double y = nearest(anchor.b(), middleY, bending.stemY() / 2);
      double far = Math.hypot(anchor.a() - x, anchor.b() - y);
      if (far > ON_STEM) {
        Line line = new Line(x, y, (anchor.a() - x) / far, (anchor.b() - y) / far);
        if (lines.stream().noneMatch(line::isSame)) {
          lines.add(line);
        }
      }
    }
    return lines.stream().map(line -> of(plate, line)).toList();
  }

  private static double nearest(double at, double middle, double half) {
    return Math.max(middle - half, Math.min(middle + half, at));
  }

  private static PlateLine of(BasePlateFoot plate, Line line) {
    Stretch whole = chord(plate, line);
    List<Double> arms = new ArrayList<>();
    List<Stretch> bent = new ArrayList<>();
    for (FacePlace anchor : plate.anchors()) {
      double arm = Math.max(0, line.beyond(anchor));
      arms.add(arm);
      double from = Math.max(whole.from, line.along(anchor) - arm);
      double to = Math.min(whole.to, line.along(anchor) + arm);
      if (arm > 0 && to > from) {
        bent.add(new Stretch(from, to));
      }
    }
    return new PlateLine(arms, united(bent));
  }

  /** The part of a line that lies on the plate, along the line from its point. */
  private static Stretch chord(BasePlateFoot plate, Line line) {
    double from = Double.NEGATIVE_INFINITY;
    double to = Double.POSITIVE_INFINITY;
    double[][] sides = {
      {line.x, -line.outY, plate.lengthX() / 2}, {line.y, line.outX, plate.lengthY() / 2}
    };
    for (double[] side : sides) {
      if (Math.abs(side[1]) > SAME) {
        double one = (-side[2] - side[0]) / side[1];
        double other = (side[2] - side[0]) / side[1];
        from = Math.max(from, Math.min(one, other));
        to = Math.min(to, Math.max(one, other));
      }
    }
    return new Stretch(from, to);
  }

  /** How much is covered, what is covered twice once. */
  private static double united(List<Stretch> stretches) {
    List<Stretch> ordered = new ArrayList<>(stretches);
    ordered.sort(Comparator.comparingDouble(Stretch::from));
    double sum = 0;
    double reached = Double.NEGATIVE_INFINITY;
    for (Stretch one : ordered) {
      sum += Math.max(0, one.to - Math.max(reached, one.from));
      reached = Math.max(reached, one.to);
    }
    return sum;
  }
}
