package spanledger.picture.structure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.analysis.SegmentModel;
import spanledger.behaviour.CombinationBehaviour;
import spanledger.frame.Frame;
import spanledger.frame.Segment;
import spanledger.picture.Drawing;
import spanledger.picture.Ink;
import spanledger.picture.Pen;
import spanledger.picture.Spot;
import spanledger.picture.Trace;
import spanledger.stability.CriticalFactor;
import spanledger.stability.ModeShape;
import spanledger.verdict.Assessment;

/** How the frame buckles under the combination that is nearest to it. */
final class ModePicture {

  /** On paper, of the greatest movement. */
  private static final double GREATEST = 46;

  private static final int BOW_PIECES = 24;
  private static final double RIM = 56;

  private final Subject subject;
  private final CombinationBehaviour behaviour;
  private final CriticalFactor critical;
  private final Page page;
  private final Placing placing;

  private ModePicture(Subject subject, CombinationBehaviour behaviour, CriticalFactor critical) {
    this.subject = subject;
    this.behaviour = behaviour;
    this.critical = critical;
    page = new Page(subject, "Buckling mode of the lowest critical load factor", true);
    placing = Placing.filling(subject.general(), subject.places(), page.room(RIM));
  }

  /** The picture; nothing if nothing buckles. */
  static Optional<Drawing> of(Subject subject, Assessment assessment) {
    return assessment
        .behaviour()
        .nearestToBuckling()
        .flatMap(
            b ->
                b.critical()
                    .filter(CriticalFactor::buckles)
                    .map(c -> new ModePicture(subject, b, c).draw()));
  }

  /** The shapes of all segments when their nodes move as in a mode. */
  static List<SegmentShape> shapes(Frame frame, ModeShape mode) {
    List<SegmentShape> shapes = new ArrayList<>();
    for (Segment segment : frame.segments()) {
      double[] movements = new double[SegmentModel.ENDS];
      int[] nodes = {frame.indexOf(segment.first()), frame.indexOf(segment.second())};
      for (int i = 0; i < SegmentModel.ENDS; i++) {
        movements[i] = mode.movement(6 * nodes[i / 6] + i % 6);
      }
      shapes.add(SegmentShape.of(segment, movements));
    }
    return shapes;
  }

  private Drawing draw() {
    Overlay overlay = new Overlay(subject, page, placing);
    overlay.rest();
    MovedFrame moved = new MovedFrame(shapes(subject.frame(), critical.mode()), page, placing);
    double size = moved.farthest().size();
    if (size > 0) {
      moved.draw(GREATEST / placing.scale() / size);
    } else {
      bow();
    }
    page.legend.heading("Buckling mode");
    MovedFrame.legend(page);
    page.legend.words(
        "Sizes of movements in a mode have no meaning, only their proportions.", Ink.BLACK);
    page.legend.heading("Critical load factor");
    page.legend.words("α_cr = " + Overlay.three(critical.factor()), Ink.BLACK);
    page.legend.words("Combination " + behaviour.instance().words(), Ink.BLACK);
    page.legend.words(critical.mode().words(), Ink.BLACK);
    return page.finish(
        "The frame would buckle elastically if all axial forces of this combination were"
            + " multiplied by α_cr; of all combinations"
            + " looked at, this one is nearest to it. Movements of nodes are those of the mode;"
            + " between nodes members are drawn as bent"
            + " by them alone; which way a member bows is not said. See the sheet Stability.");
  }

  /** A member that bows between nodes which stay in place. */
  private void bow() {
    for (Segment segment : subject.frame().segments()) {
      if (!critical.mode().words().startsWith("member " + segment.name() + " bows")) {
        continue;
      }
      Spot from = placing.spot(segment.from());
      Spot to = placing.spot(segment.to());
      double length = Math.max(from.distance(to), 1);
      List<Spot> line = new ArrayList<>();
      for (int i = 0; i <= BOW_PIECES; i++) {
        double t = (double) i / BOW_PIECES;
        double off = GREATEST * 0.6 * Math.sin(Math.PI * t);
        line.add(
            from.towards(to, t)
                .plus(-(to.y() - from.y()) / length * off, (to.x() - from.x()) / length * off));
      }
      page.paper.line(Trace.through(line, false), Pen.full(Ink.BLACK, 1.7));
      page.labels.avoid(line);
      page.labels.near(line.get(BOW_PIECES / 2), segment.name() + " bows", 12, Ink.BLACK, true);
    }
  }
}
