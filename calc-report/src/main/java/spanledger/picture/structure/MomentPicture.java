package spanledger.picture.structure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import spanledger.analysis.InternalForces;
import spanledger.envelope.Governing;
import spanledger.frame.Vector;
import spanledger.picture.Drawing;
import spanledger.picture.Ink;
import spanledger.picture.Pen;
import spanledger.picture.Spot;
import spanledger.picture.Trace;
import spanledger.verdict.Assessment;
import spanledger.verdict.Status;
import spanledger.verdict.Verdict;

/** Bending moments under the combination that governs the worst strength verdict. */
final class MomentPicture {

  /** On paper, of the greatest moment if one looks at it squarely. */
  private static final double GREATEST = 64;

  /** Moments below this share of the greatest are not drawn. */
  private static final double LEAST = 0.01;

  /** Peaks below this share of the greatest get no label. */
  private static final double LEAST_LABELLED = 0.15;

  private static final int MOST_LABELS = 10;
  private static final double PER_KNM = 1e-6;
  private static final double RIM = 56;
  private static final Ink ABOUT_Y = new Ink(0x8FBDB9);
  private static final Ink ABOUT_Z = new Ink(0xEFE3C2);
  private static final Pen EDGE_Y = Pen.full(new Ink(0x1E4A4A), 0.9);
  private static final Pen EDGE_Z = Pen.dashed(new Ink(0x6B5416), 0.9, 4.0, 2.0);

  private final Subject subject;
  private final Governed governed;
  private final Page page;
  private final Placing placing;

  private MomentPicture(Subject subject, Governed governed) {
    this.subject = subject;
    this.governed = governed;
    page = new Page(subject, "Bending moments of the governing combination", true);
    placing = Placing.filling(subject.general(), subject.places(), page.room(RIM));
  }

  /** The picture; nothing if no verdict on strength has a combination that was solved. */
  static Optional<Drawing> of(Subject subject, Assessment assessment) {
    return Governed.strength(assessment).map(g -> new MomentPicture(subject, g).draw());
  }

  /**
   * A moment at a place.
   *
   * @param x from the segment's start, mm
   * @param place global, mm
   * @param aboutY M_y, N·mm
   * @param aboutZ M_z, N·mm
   * @param stretchedByY the side that M_y stretches, times M_y
   * @param stretchedByZ the side that M_z stretches, times M_z
   */
  record Ordinate(
      double x,
      Vector place,
      double aboutY,
      double aboutZ,
      Vector stretchedByY,
      Vector stretchedByZ) {}

  /** The moments along a segment from end to end. */
  static List<Ordinate> ordinates(SegmentShape shape) {
    List<Ordinate> ordinates = new ArrayList<>();
    for (double x : shape.places()) {
      InternalForces forces = shape.forces(x);
      ordinates.add(
          new Ordinate(
              x,
              shape.rest(x),
              forces.momentY(),
              forces.momentZ(),
              shape.stretchedByY(forces),
              shape.stretchedByZ(forces)));
    }
    return ordinates;
  }

  /** A peak to label. */
  private record Peak(String member, Ordinate at, double moment, Vector stretched, String axis) {}

  private Drawing draw() {
    Overlay overlay = new Overlay(subject, page, placing);
    overlay.rest();
    List<SegmentShape> shapes = governed.shapes(subject.frame());
    List<List<Ordinate>> all = new ArrayList<>();
    double greatest = 0;
    for (SegmentShape shape : shapes) {
      List<Ordinate> one = ordinates(shape);
      all.add(one);
      for (Ordinate o : one) {
        greatest = Math.max(greatest, Math.max(Math.abs(o.aboutY()), Math.abs(o.aboutZ())));
      }
    }
    // mm of the structure per N·mm.
    double per = greatest > 0 ? GREATEST / placing.scale() / greatest : 0;
    List<Peak> peaks = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      String member = shapes.get(i).segment().member().name();
      diagram(member, all.get(i), greatest, per, peaks);
    }
    overlay.standing(governed.governing().instance());
    overlay.open(governed.open());
    governingLabel(per);
    labels(peaks, greatest, per);
    legend(per, peaks);
    return page.finish(
        "Combination "
            + governed.words()
            + ". Moments are drawn on the side that they stretch; arrows show where the moving"
            + " load stands. From the same"
            + " solution as the sheets Cuts and Member strength.");
  }

  private void diagram(
      String member, List<Ordinate> one, double greatest, double per, List<Peak> peaks) {
    Peak y = null;
    Peak z = null;
    for (Ordinate o : one) {
      if (z == null || Math.abs(o.aboutZ()) > Math.abs(z.moment())) {
        z = new Peak(member, o, o.aboutZ(), o.stretchedByZ(), "M_z");
      }
      if (y == null || Math.abs(o.aboutY()) > Math.abs(y.moment())) {
        y = new Peak(member, o, o.aboutY(), o.stretchedByY(), "M_y");
      }
    }
    if (z != null && Math.abs(z.moment()) > LEAST * greatest) {
      area(one, o -> o.stretchedByZ().times(per), ABOUT_Z, EDGE_Z);
      peaks.add(z);
    }
    if (y != null && Math.abs(y.moment()) > LEAST * greatest) {
      area(one, o -> o.stretchedByY().times(per), ABOUT_Y, EDGE_Y);
      peaks.add(y);
    }
  }

  private interface Off {
    Vector of(Ordinate ordinate);
  }

  private void area(List<Ordinate> one, Off off, Ink ink, Pen edge) {
    List<Spot> rim = new ArrayList<>();
    Ordinate first = one.get(0);
    Ordinate last = one.get(one.size() - 1);
    rim.add(placing.spot(first.place()));
    one.forEach(o -> rim.add(placing.spot(o.place().plus(off.of(o)))));
    rim.add(placing.spot(last.place()));
    page.paper.area(Trace.through(rim, true), ink, edge);
    page.paper.line(Trace.through(rim.get(0), rim.get(rim.size() - 1)), Pen.full(Ink.BLACK, 1.3));
    page.labels.avoid(rim);
  }

  private void governingLabel(double per) {
    Governing governing = governed.governing();
    SegmentShape shape = governed.shape();
    double x = governing.station().x();
    InternalForces forces = shape.forces(x);
    Vector off =
        Math.abs(forces.momentY()) >= Math.abs(forces.momentZ())
            ? shape.stretchedByY(forces)
            : shape.stretchedByZ(forces);
    Spot at = placing.spot(shape.rest(x).plus(off.times(per)));
    page.paper.area(
        Trace.circle(placing.spot(shape.rest(x)), 3.2), Ink.WHITE, Pen.full(Ink.BLACK, 1.3));
    page.labels.near(
        at,
        "governs: about y "
            + Overlay.three(forces.momentY() * PER_KNM)
            + ", about z "
            + Overlay.three(forces.momentZ() * PER_KNM)
            + " kN·m",
        12,
        Ink.BLACK,
        true);
  }

  private void labels(List<Peak> peaks, double greatest, double per) {
    peaks.sort(Comparator.comparingDouble((Peak p) -> -Math.abs(p.moment())));
    Set<String> written = new HashSet<>();
    Set<String> members = new HashSet<>();
    members.add(governed.governing().station().segment().member().name());
    for (Peak peak : peaks) {
      if (Math.abs(peak.moment()) < LEAST_LABELLED * greatest || written.size() >= MOST_LABELS) {
        return;
      }
      String words = Overlay.three(Math.abs(peak.moment()) * PER_KNM);
      if (members.add(peak.member()) && written.add(words)) {
        Spot at = placing.spot(peak.at().place().plus(peak.stretched().times(per)));
        page.labels.offer(at, words, Page.SIZE, Ink.BLACK);
      }
    }
  }

  private void legend(double per, List<Peak> peaks) {
    Set<String> shown = peaks.stream().map(Peak::axis).collect(Collectors.toSet());
    Verdict verdict = governed.verdict();
    page.legend.heading("Moments, kN·m");
    if (shown.contains("M_y")) {
      page.legend.sample(
          (paper, at) -> paper.area(sample(at), ABOUT_Y, EDGE_Y),
          "M_y, about the section's y axis");
    }
    if (shown.contains("M_z")) {
      page.legend.sample(
          (paper, at) -> paper.area(sample(at), ABOUT_Z, EDGE_Z),
          "M_z, about the section's z axis");
    }
    if (per > 0) {
      page.legend.words(
          "Scale: 1 kN·m is "
              + Sizes.mm(Math.rint(per / PER_KNM))
              + " mm of the structure. Numbers are the greatest of a member, without sign; of"
              + " equal ones only the first is written.",
          Ink.BLACK);
    }
    page.legend.heading("Worst strength verdict");
    words(page, verdict);
  }

  private static Trace sample(Spot at) {
    return Trace.around(at.plus(-15, -6), at.plus(15, -6), at.plus(15, 6), at.plus(-15, 6));
  }

  /** A verdict in a legend. */
  static void words(Page page, Verdict verdict) {
    page.legend.words(verdict.subject() + ", " + verdict.check(), Ink.BLACK);
    verdict
        .governing()
        .ifPresent(
            g -> page.legend.words("at " + g.station().words() + " from its start", Ink.BLACK));
    String unit = verdict.unit().isEmpty() ? "" : " " + verdict.unit();
    page.legend.words(
        "demand "
            + Overlay.three(verdict.demand())
            + unit
            + ", capacity "
            + Overlay.three(verdict.capacity())
            + unit,
        Ink.BLACK);
    page.legend.words(
        "utilisation "
            + UtilisationPicture.two(verdict.utilisation())
            + ", "
            + verdict.status().words(),
        verdict.status() == Status.FAILED ? UseBand.FAILS.ink() : Ink.BLACK);
  }
}
