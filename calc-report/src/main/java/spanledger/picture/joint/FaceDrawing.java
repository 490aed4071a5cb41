package spanledger.picture.joint;

import java.util.List;
import java.util.Locale;
import spanledger.joint.BracketLeg;
import spanledger.joint.FaceKeys;
import spanledger.joint.FacePlace;
import spanledger.joint.JointFace;
import spanledger.joint.Ply;
import spanledger.joint.SlotLips;
import spanledger.jointdesign.FaceRun;
import spanledger.picture.Drawing;
import spanledger.picture.Ink;
import spanledger.picture.Lettering;
import spanledger.picture.Mark;
import spanledger.picture.Pen;
import spanledger.picture.Spot;
import spanledger.picture.Trace;
import spanledger.resistance.member.Working;

/**
 * One face of a joint in a box of the paper: first axis to the right, second axis upwards. Arrows
 * are shears, bolts are the redder the more they are pulled, dots are as large as the bed presses.
 */
final class FaceDrawing {

  private static final double SIZE = 11;
  private static final double LINE = 14;
  private static final double ARROW = 48;
  private static final Ink FORCE = new Ink(0xB4432F);
  private static final Ink PULL = new Ink(0xE3A08F);
  private static final Ink KEY = new Ink(0x8FBDB9);
  private static final Ink BED = new Ink(0x5B7FA6);

  /** More bolts than that are listed in two columns. */
  private static final int ONE_COLUMN = 6;

  private static final double LARGEST_DOT = 7;

  /** Lengths in mm that a scale may show. */
  private static final double[] SCALES = {500, 200, 100, 50, 20, 10, 5, 2, 1};

  private final Drawing.Paper paper;
  private final Lettering lettering;
  private final Spot corner;
  private final double width;
  private final double height;
  private final double mostShear;
  private final double mostTension;
  private double below;
  private double scale = 1;
  private double middleA;
  private double middleB;

  /**
   * @param corner upper left corner of the box
   * @param mostShear the shear that the longest arrow stands for, N
   * @param mostTension the tension that the reddest bolt stands for, N
   */
  FaceDrawing(
      Drawing.Paper paper,
      Lettering lettering,
      Spot corner,
      double width,
      double height,
      double mostShear,
      double mostTension) {
    this.paper = paper;
    this.lettering = lettering;
    this.corner = corner;
    this.width = width;
    this.height = height;
    this.mostShear = mostShear;
    this.mostTension = mostTension;
  }

  void draw(JointFace face, FaceRun run) {
    List<Working> demands = run.demands();
    int columns = demands.size() > ONE_COLUMN ? 2 : 1;
    int lines = (demands.size() + columns - 1) / columns;
    below = LINE * (lines + 2);
    fit(face);
    words(
        0,
        0,
        "face "
            + face.name()
            + ": "
            + face.first().letter()
            + " to the right, "
            + face.second().letter()
            + " upwards");
    for (int i = face.plies().size() - 1; i >= 0; i--) {
      ply(face.plies().get(i), i == 0);
    }
    face.lips().ifPresent(lips -> slot(face, lips));
    face.keys().ifPresent(this::keys);
    face.leg().ifPresent(leg -> bend(face.plies().get(0), leg));
    bed(run.contacts());
    for (int i = 0; i < demands.size(); i++) {
      bolt(i, face, run.shears().get(i), demands.get(i));
    }
    scale();
    for (int i = 0; i < demands.size(); i++) {
      int column = i / lines;
      words(
          width / 2 * column,
          height - LINE * (lines - i % lines),
          String.format(
              Locale.ROOT,
              "bolt %d: shear %.2f kN, tension %.2f kN",
              i + 1,
              demands.get(i).value("F_v") / 1000,
              demands.get(i).value("F_t") / 1000));
    }
  }

  /** Chooses the scale by the leg, so that a wall that goes on does not make the joint small. */
  private void fit(JointFace face) {
    Ply leg = face.plies().get(0);
    double wide = leg.to().a() - leg.from().a();
    double high = leg.to().b() - leg.from().b();
    scale = Math.min((width - 2 * ARROW) / wide, (height - below - 2 * ARROW) / high);
    middleA = (leg.from().a() + leg.to().a()) / 2;
    middleB = (leg.from().b() + leg.to().b()) / 2;
  }

  private Spot spot(double a, double b) {
    double down = (height - below) / 2;
    return corner.plus(
        within((a - middleA) * scale, width / 2 - 4) + width / 2,
        down - within((b - middleB) * scale, down - LINE));
  }

  private static double within(double value, double most) {
    return Math.max(-most, Math.min(most, value));
  }

  private void ply(Ply ply, boolean leg) {
    Trace edge =
        Trace.around(
            spot(ply.from().a(), ply.from().b()),
            spot(ply.to().a(), ply.from().b()),
            spot(ply.to().a(), ply.to().b()),
            spot(ply.from().a(), ply.to().b()));
    if (leg) {
      paper.area(edge, Ink.PALE, Pen.full(Ink.BLACK, 1.2));
    } else {
      paper.line(edge, Pen.dashed(Ink.QUIET, 0.8, 5.0, 3.0));
    }
  }

  private void keys(FaceKeys keys) {
    double a = (keys.bearsAlongFirst() ? keys.thickness() : keys.length()) / 2;
    double b = (keys.bearsAlongFirst() ? keys.length() : keys.thickness()) / 2;
    for (FacePlace at : keys.places()) {
      paper.area(
          Trace.around(
              spot(at.a() - a, at.b() - b),
              spot(at.a() + a, at.b() - b),
              spot(at.a() + a, at.b() + b),
              spot(at.a() - a, at.b() + b)),
          KEY,
          Pen.full(Ink.QUIET, 0.8));
    }
  }

  /** The edges of the slot's lips, from one end of the leg to the other. */
  private void slot(JointFace face, SlotLips lips) {
    Ply leg = face.plies().get(0);
    for (int side = -1; side <= 1; side += 2) {
      double off = side * lips.opening() / 2;
      for (double line : lines(face.bolts().places(), lips.alongFirst())) {
        Trace edge =
            lips.alongFirst()
                ? Trace.through(spot(leg.from().a(), line + off), spot(leg.to().a(), line + off))
                : Trace.through(spot(line + off, leg.from().b()), spot(line + off, leg.to().b()));
        paper.line(edge, Pen.dashed(Ink.QUIET, 0.8, 2.0, 3.0));
      }
    }
  }

  /** Where bolts stand across the slots, each place once. */
  private static double[] lines(List<FacePlace> places, boolean alongFirst) {
    return places.stream().mapToDouble(at -> alongFirst ? at.b() : at.a()).distinct().toArray();
  }

  /** Where the leg bends away. */
  private void bend(Ply ply, BracketLeg leg) {
    Trace line =
        leg.acrossFirst()
            ? Trace.through(spot(leg.at(), ply.from().b()), spot(leg.at(), ply.to().b()))
            : Trace.through(spot(ply.from().a(), leg.at()), spot(ply.to().a(), leg.at()));
    paper.line(line, Pen.full(Ink.BLACK, 3));
  }

  /** Dots whose area is in proportion to the force on each piece. */
  private void bed(List<Working> contacts) {
    double most = contacts.stream().mapToDouble(piece -> piece.value("C")).max().orElse(0);
    for (Working piece : contacts) {
      double part = most > 0 ? piece.value("C") / most : 0;
      if (part > 0.001) {
        paper.area(
            Trace.circle(spot(piece.value("y"), piece.value("z")), LARGEST_DOT * Math.sqrt(part)),
            BED);
      }
    }
  }

  /** A length that the eye can compare with. */
  private void scale() {
    for (double length : SCALES) {
      if (length * scale <= width / 4) {
        Spot left = corner.plus(0, height - below + 2);
        Spot right = left.plus(length * scale, 0);
        paper.line(Trace.through(left, right), Pen.full(Ink.QUIET, 1.2));
        for (Spot end : List.of(left, right)) {
          paper.line(Trace.through(end.plus(0, -3), end.plus(0, 3)), Pen.full(Ink.QUIET, 1.2));
        }
        paper.words(
            right.plus(5, SIZE / 3),
            String.format(Locale.ROOT, "%.0f mm", length),
            SIZE,
            Mark.Anchor.START,
            Ink.QUIET);
        return;
      }
    }
  }

  private void bolt(int index, JointFace face, Working shear, Working demand) {
    FacePlace at = face.bolts().places().get(index);
    Spot centre = spot(at.a(), at.b());
    double radius = Math.max(4, face.bolts().size().diameter() / 2 * scale);
    double pulled = mostTension > 0 ? demand.value("F_t") / mostTension : 0;
    paper.area(
        Trace.circle(centre, radius), Ink.WHITE.towards(PULL, pulled), Pen.full(Ink.BLACK, 1.2));
    double right = shear.value("F_y");
    double up = shear.value("F_z");
    double size = Math.hypot(right, up);
    if (mostShear > 0 && size > 0.01 * mostShear) {
      double length = ARROW * size / mostShear;
      arrow(centre, centre.plus(length * right / size, -length * up / size));
    }
    paper.words(
        centre.plus(radius + 3, -radius - 2),
        Integer.toString(index + 1),
        SIZE,
        Mark.Anchor.START,
        Ink.BLACK);
  }

  private void arrow(Spot from, Spot to) {
    paper.line(Trace.through(from, to), Pen.full(FORCE, 2));
    double length = from.distance(to);
    double x = (to.x() - from.x()) / length;
    double y = (to.y() - from.y()) / length;
    paper.area(
        Trace.around(
            to.plus(x * 4, y * 4),
            to.plus(-x * 5 - y * 4, -y * 5 + x * 4),
            to.plus(-x * 5 + y * 4, -y * 5 - x * 4)),
        FORCE);
  }

  private void words(double right, double down, String words) {
    paper.words(
        corner.plus(right, down + SIZE),
        JointPicture.written(words, lettering),
        SIZE,
        Mark.Anchor.START,
        Ink.BLACK);
  }
}
