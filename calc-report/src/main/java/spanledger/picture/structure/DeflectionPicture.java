package spanledger.picture.structure;

import java.util.Optional;
import spanledger.picture.Drawing;
import spanledger.picture.Ink;
import spanledger.picture.Pen;
import spanledger.picture.Spot;
import spanledger.picture.Trace;
import spanledger.verdict.Assessment;
import spanledger.verdict.Verdict;

/** The frame as it moves under the combination that governs the worst deflection verdict. */
final class DeflectionPicture {

  /** On paper, of the greatest movement, at most. */
  private static final double GREATEST = 60;

  private static final double RIM = 56;

  private final Subject subject;
  private final Governed governed;
  private final Page page;
  private final Placing placing;

  private DeflectionPicture(Subject subject, Governed governed) {
    this.subject = subject;
    this.governed = governed;
    page = new Page(subject, "Deflected shape of the governing combination", true);
    placing = Placing.filling(subject.general(), subject.places(), page.room(RIM));
  }

  /** The picture; nothing if no verdict on a deflection has a combination that was solved. */
  static Optional<Drawing> of(Subject subject, Assessment assessment) {
    return Governed.deflection(assessment).map(g -> new DeflectionPicture(subject, g).draw());
  }

  private Drawing draw() {
    Overlay overlay = new Overlay(subject, page, placing);
    overlay.rest();
    MovedFrame moved = new MovedFrame(governed.shapes(subject.frame()), page, placing);
    MovedFrame.Farthest farthest = moved.farthest();
    double factor =
        farthest.size() > 0 ? Overlay.round(GREATEST / placing.scale() / farthest.size()) : 1;
    moved.draw(factor);
    overlay.standing(governed.governing().instance());
    overlay.open(governed.open());
    Verdict verdict = governed.verdict();
    double x = governed.governing().station().x();
    Spot governs = moved.spot(governed.shape(), x, factor);
    label(governs, verdict.check() + " " + Overlay.three(verdict.demand()) + " mm");
    if (governs.distance(moved.spot(farthest.shape(), farthest.x(), factor)) > 4) {
      label(
          moved.spot(farthest.shape(), farthest.x(), factor),
          "farthest: moves " + Overlay.three(farthest.size()) + " mm");
    }
    page.legend.heading("Movements, mm");
    MovedFrame.legend(page);
    page.legend.words(
        "Movements are drawn "
            + Overlay.factor(factor)
            + " times their size at the scale of the structure.",
        Ink.BLACK);
    page.legend.heading("Worst deflection verdict");
    MomentPicture.words(page, verdict);
    return page.finish(
        "Combination "
            + governed.words()
            + ". The verdict's deflection is measured as the sheet Deflection says: of floor"
            + " members from the line between their"
            + " ends, of rails and posts and for sway from where the place was.");
  }

  private void label(Spot at, String words) {
    page.paper.area(Trace.circle(at, 3.2), Ink.WHITE, Pen.full(Ink.BLACK, 1.3));
    page.labels.near(at, words, 12, Ink.BLACK, true);
  }
}
