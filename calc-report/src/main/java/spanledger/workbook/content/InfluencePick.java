package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import spanledger.action.LimitState;
import spanledger.action.LoadPath;
import spanledger.analysis.FrameAnalysis;
import spanledger.analysis.SegmentEffect;
import spanledger.envelope.DeflectionFinding;
import spanledger.envelope.ForceExtreme;
import spanledger.envelope.Influence;
import spanledger.envelope.Station;
import spanledger.frame.Frame;
import spanledger.frame.Freedom;
import spanledger.frame.MemberRole;
import spanledger.frame.Restraint;
import spanledger.frame.Support;
import spanledger.frame.Vector;
import spanledger.verdict.Assessment;

/**
 * An effect whose influence line is drawn: the greatest of its kind where moving loads walk.
 *
 * @param words what it is
 * @param effect what is looked at
 * @param influence what a load anywhere adds to it
 * @param path the chain of members on which a single force can do most
 * @param worst where it does, mm along the path
 */
record InfluencePick(
    String words, Effect effect, Influence influence, LoadPath path, double worst) {

  /** What is looked at. */
  sealed interface Effect {}

  /** The unit of its ordinates. */
  String unit() {
    return effect instanceof Reaction ? "N/N" : effect instanceof Force ? "N·mm/N" : "mm/N";
  }

  /** An internal force at a cut. */
  record Force(Station station, SegmentEffect force) implements Effect {}

  /** How far a cut moves along a direction of length 1. */
  record Movement(Station station, Vector direction) implements Effect {}

  /** The reaction of a support that is held. */
  record Reaction(Support support, Freedom freedom) implements Effect {}

  private static final Set<SegmentEffect> BENDING =
      Set.of(SegmentEffect.MOMENT_Y, SegmentEffect.MOMENT_Z);

  /**
   * What to draw, most telling first: bending of a floor member, an upright reaction, the sag of a
   * floor, bending of a rail. Members on chains of several segments come first: on one alone the
   * line is a triangle.
   *
   * @param segments how many segments all lines together may be proved on, but one line always is
   */
  static List<InfluencePick> of(Assessment assessment, int segments) {
    Frame frame = assessment.frame();
    LoadChains chains = LoadChains.of(frame, assessment.actions());
    FrameAnalysis analysis = new FrameAnalysis(frame);
    List<InfluencePick> picks = new ArrayList<>();
    bending(assessment, analysis, chains, MemberRole.FLOOR).ifPresent(picks::add);
    reaction(assessment, analysis, chains).ifPresent(picks::add);
    sag(assessment, analysis, chains).ifPresent(picks::add);
    bending(assessment, analysis, chains, MemberRole.RAIL).ifPresent(picks::add);
    int most = Math.max(1, segments / frame.segments().size());
    return picks.subList(0, Math.min(most, picks.size()));
  }

  private static Optional<InfluencePick> bending(
      Assessment assessment, FrameAnalysis analysis, LoadChains chains, MemberRole role) {
    return assessment.forces().stream()
        .filter(e -> e.member().role() == role && chains.length(e.member()) > 0)
        .flatMap(e -> e.governing().stream())
        .filter(e -> BENDING.contains(e.effect()) && e.governing().value() != 0)
        .max(
            Comparator.<ForceExtreme, Boolean>comparing(
                    e -> chains.length(e.governing().station().segment().member()) > 1)
                .thenComparing(e -> Math.abs(e.governing().value())))
        .flatMap(
            e -> {
              Station station = e.governing().station();
              return drawn(
                  "Bending moment " + e.effect().symbol() + " at " + station.words(),
                  new Force(station, e.effect()),
                  Influence.ofForce(analysis, station, e.effect()),
                  chains.of(role));
            });
  }

  private static Optional<InfluencePick> reaction(
      Assessment assessment, FrameAnalysis analysis, LoadChains chains) {
    return assessment.findings().reactions().stream()
        .filter(r -> r.limitState() == LimitState.STRENGTH && r.freedom() == Freedom.SHIFT_Z)
        .filter(r -> r.support().restraint(r.freedom()).engaged() instanceof Restraint.Fixed)
        .max(Comparator.comparingDouble(r -> Math.abs(r.value())))
        .flatMap(
            r ->
                drawn(
                    "Reaction of " + r.support().node().name() + " " + r.freedom().words(),
                    new Reaction(r.support(), r.freedom()),
                    Influence.ofReaction(analysis, r.support(), r.freedom()),
                    chains.of(MemberRole.FLOOR)));
  }

  private static Optional<InfluencePick> sag(
      Assessment assessment, FrameAnalysis analysis, LoadChains chains) {
    return assessment.findings().deflections().stream()
        .filter(d -> d.kind() == DeflectionFinding.Kind.FROM_CHORD)
        .max(
            Comparator.<DeflectionFinding, Boolean>comparing(d -> chains.length(d.member()) > 1)
                .thenComparing(d -> d.governing().value()))
        .flatMap(
            d -> {
              Station station = d.governing().station();
              return drawn(
                  "Movement down of " + station.words() + ", from where it stood",
                  new Movement(station, d.direction()),
                  Influence.ofMovement(analysis, station, d.direction()),
                  chains.of(MemberRole.FLOOR));
            });
  }

  private static Optional<InfluencePick> drawn(
      String words, Effect effect, Influence influence, List<LoadPath> paths) {
    return LoadChains.most(influence, paths)
        .map(m -> new InfluencePick(words, effect, influence, m.path(), m.at()));
  }
}
