package spanledger.picture.joint;

import java.util.List;
import java.util.Locale;
import spanledger.joint.FaceKeys;
import spanledger.joint.FacePlace;
import spanledger.joint.JointFace;
import spanledger.joint.Ply;
import spanledger.jointdesign.FaceRun;
import spanledger.picture.Drawing;
import spanledger.picture.Ink;
import spanledger.picture.Lettering;
import spanledger.picture.Mark;
import spanledger.picture.Pen;
import spanledger.picture.Spot;
import spanledger.picture.Trace;
import spanledger.resistance.member.Working;

/** One face of a joint in a box of the paper: first axis to the right, second axis upwards. */
final class FaceDrawing {

  private static final double SIZE = 11;
  private static final double LINE = 14;
  private static final double ARROW = 48;
  private static final Ink FORCE = new Ink(0xB4432F);
  private static final Ink KEY = new Ink(0x8FBDB9);

  private final Drawing.Paper paper;
  private final Lettering lettering;
  private final Spot corner;
  private final double width;
  private final double height;
  private final double mostShear;
  private double scale = 1;
  private double middleA;
  private double middleB;

  /**
   * @param corner upper left corner of the box
   * @param mostShear the shear that the longest arrow stands for, N
   */
  FaceDrawing(
      Drawing.Paper paper,
      Lettering lettering,
      Spot corner,
      double width,
      double height,
      double mostShear) {
    this.paper = paper;
    this.lettering = lettering;
    this.corner = corner;
    this.width = width;
    this.height = height;
    this.mostShear = mostShear;
  }

  void draw(JointFace face, FaceRun run) {
    List<Working> demands = run.demands();
    fit(face, LINE * (demands.size() + 3));
    words(
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
    face.keys().ifPresent(this::keys);
    for (int i = 0; i < demands.size(); i++) {
      bolt(i, face, run.shears().get(i));
    }
    for (int i = 0; i < demands.size(); i++) {
      double from = height - LINE * (demands.size() - i);
      words(
          from,
          String.format(
              Locale.ROOT,
              "bolt %d: shear %.2f kN, tension %.2f kN",
              i + 1,
              demands.get(i).value("F_v") / 1000,
              demands.get(i).value("F_t") / 1000));
    }
  }

  /** Chooses the scale by the leg, so that a wall that goes on does not make the joint small. */
  private void fit(JointFace face, double below) {
    Ply leg = face.plies().get(0);
    double wide = leg.to().a() - leg.from().a();
    double high = leg.to().b() - leg.from().b();
    scale = Math.min((width - 2 * ARROW) / wide, (height - below - 2 * ARROW) / high);
    middleA = (leg.from().a() + leg.to().a()) / 2;
    middleB = (leg.from().b() + leg.to().b()) / 2;
  }

  private Spot spot(double a, double b) {
    double down = (height - LINE * 4) / 2;
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

  private void bolt(int index, JointFace face, Working shear) {
    FacePlace at = face.bolts().places().get(index);
    Spot centre = spot(at.a(), at.b());
    double radius = Math.max(4, face.bolts().size().diameter() / 2 * scale);
    paper.area(Trace.circle(centre, radius), Ink.WHITE, Pen.full(Ink.BLACK, 1.2));
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

  private void words(double down, String words) {
    paper.words(
        corner.plus(0, down + SIZE),
        JointPicture.written(words, lettering),
        SIZE,
        Mark.Anchor.START,
        Ink.BLACK);
  }
}
