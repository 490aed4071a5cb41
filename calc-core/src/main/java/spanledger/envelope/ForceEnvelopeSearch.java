package spanledger.envelope;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import spanledger.action.Combination;
import spanledger.action.LimitState;
import spanledger.analysis.Extreme;
import spanledger.analysis.SegmentEffect;
import spanledger.analysis.SegmentResponse;
import spanledger.analysis.Side;
import spanledger.frame.Member;
import spanledger.frame.Segment;

/**
 * Finds the greatest and the least of every internal force of every member, with what causes it.
 *
 * <p>At one cut a force is a linear effect, so its extremes are exact. Cuts are the ends of every
 * segment and, just before and just past, the places of the loads on it; for moments also its
 * quarters, unless it bears no load. The cut that governs moves to where the worst state peaks, and
 * that of a moment, if the moving load stands on the same segment, together with the load to where
 * both are worst.
 */
final class ForceEnvelopeSearch {

  private static final double[] QUARTERS = {0.25, 0.5, 0.75};
  private static final int ROUNDS = 4;

  /** Forces, N and N·mm, that are only rounding. */
  private static final double NOTHING = 1e-6;

  private final Responses responses;
  private final List<Combination> combinations;
  private final BitSet travelled = new BitSet();

  ForceEnvelopeSearch(Responses responses, List<Combination> combinations) {
    this.responses = responses;
    this.combinations =
        combinations.stream()
            .filter(c -> c.template().limitState() == LimitState.STRENGTH)
            .toList();
    for (Combination combination : this.combinations) {
      combination
          .moving()
          .ifPresent(m -> responses.stretches(m.load()).forEach(s -> s.addTouched(travelled)));
    }
  }

  List<ForceEnvelope> run() {
    List<ForceEnvelope> envelopes = new ArrayList<>();
    if (!combinations.isEmpty()) {
      responses.frame().members().forEach(member -> envelopes.add(envelope(member)));
    }
    return envelopes;
  }

  private ForceEnvelope envelope(Member member) {
    List<ForceExtreme> atEnds = new ArrayList<>();
    EnumMap<SegmentEffect, Best> greatest = new EnumMap<>(SegmentEffect.class);
    EnumMap<SegmentEffect, Best> least = new EnumMap<>(SegmentEffect.class);
    for (Segment segment : responses.frame().segmentsOf(member)) {
      double length = responses.analysis().model(segment).length();
      double[] places = places(segment);
      double[] forMoments = withQuarters(segment, places);
      for (SegmentEffect effect : CutForce.FORCES) {
        for (double x : isMoment(effect) ? forMoments : places) {
          Station station = new Station(segment, x);
          LinearPeaks peaks =
              new LinearPeaks(responses, new CutForce(responses.analysis(), station, effect));
          for (int sign : new int[] {1, -1}) {
            Governing here = worst(peaks, station, sign, combinations);
            if (x == 0 || x == length) {
              atEnds.add(new ForceExtreme(effect, sign > 0, here));
            }
            (sign > 0 ? greatest : least)
                .computeIfAbsent(effect, e -> new Best(e, sign))
                .take(here);
          }
        }
      }
    }
    List<ForceExtreme> governing = new ArrayList<>();
    for (SegmentEffect effect : CutForce.FORCES) {
      for (EnumMap<SegmentEffect, Best> side : List.of(greatest, least)) {
        Best best = side.get(effect);
        if (best != null) {
          governing.add(refined(best));
        }
      }
    }
    return new ForceEnvelope(member, atEnds, governing);
  }

  /** The worst met so far of one force. */
  private static final class Best {
    final SegmentEffect effect;
    final int sign;
    private final List<Governing> met = new ArrayList<>();

    Best(SegmentEffect effect, int sign) {
      this.effect = effect;
      this.sign = sign;
    }

    /** Rounding does not move the place or the cause. */
    boolean take(Governing one) {
      if (met.isEmpty() || sign * (one.value() - worst().value()) > NOTHING) {
        met.add(one);
        return true;
      }
      return false;
    }

    Governing worst() {
      return met.get(met.size() - 1);
    }
  }

  private static Governing worst(
      LinearPeaks peaks, Station station, int sign, List<Combination> among) {
    LinearPeaks.Peak worst = peak(peaks, among.get(0), sign);
    for (Combination combination : among.subList(1, among.size())) {
      LinearPeaks.Peak peak = peak(peaks, combination, sign);
      if (sign * (peak.value() - worst.value()) > NOTHING) {
        worst = peak;
      }
    }
    double value = Math.abs(worst.value()) < NOTHING ? 0 : worst.value();
    return new Governing(worst.instance(), station, value);
  }

  private static LinearPeaks.Peak peak(LinearPeaks peaks, Combination combination, int sign) {
    return sign > 0 ? peaks.greatest(combination) : peaks.least(combination);
  }

  private Governing at(Best best, Segment segment, double x, List<Combination> among) {
    Station station = new Station(segment, x);
    return worst(
        new LinearPeaks(responses, new CutForce(responses.analysis(), station, best.effect)),
        station,
        best.sign,
        among);
  }

  /** The ends, and both sides of loads that stand still. */
  private double[] places(Segment segment) {
    double length = responses.analysis().model(segment).length();
    TreeSet<Double> places = new TreeSet<>(List.of(0.0, length));
    for (SegmentResponse one : responses.along(segment)) {
      for (double x : one.breaks()) {
        if (x > 0 && x < length) {
          places.add(x);
          places.add(Math.min(x + StrengthLook.JUST_PAST, length));
        }
      }
    }
    return places.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private double[] withQuarters(Segment segment, double[] places) {
    if (!travelled.get(segment.index())
        && Arrays.stream(responses.along(segment)).allMatch(SegmentResponse::isUnloaded)) {
      return places;
    }
    double length = responses.analysis().model(segment).length();
    return DoubleStream.concat(
            Arrays.stream(places), Arrays.stream(QUARTERS).map(part -> part * length))
        .sorted()
        .distinct()
        .toArray();
  }

  private static boolean isMoment(SegmentEffect effect) {
    return effect == SegmentEffect.MOMENT_Y || effect == SegmentEffect.MOMENT_Z;
  }

  private ForceExtreme refined(Best best) {
    if (best.worst().value() != 0) {
      followState(best);
      if (isMoment(best.effect)) {
        followLoad(best);
      }
    }
    return new ForceExtreme(best.effect, best.sign > 0, best.worst());
  }

  /** Moves the cut to where the worst state peaks, as long as that makes it worse. */
  private void followState(Best best) {
    for (int round = 0; round < ROUNDS; round++) {
      Segment segment = best.worst().station().segment();
      SegmentResponse state = responses.of(best.worst().instance(), segment);
      Extreme peak = best.sign > 0 ? state.greatest(best.effect) : state.least(best.effect);
      if (!(best.sign * (peak.value() - best.worst().value()) > NOTHING)) {
        return;
      }
      double length = responses.analysis().model(segment).length();
      boolean past = peak.side() == Side.AFTER && peak.x() > 0;
      double x = past ? Math.min(peak.x() + StrengthLook.JUST_PAST, length) : peak.x();
      if (!best.take(at(best, segment, x, combinations))) {
        return;
      }
    }
  }

  /** Moves the cut together with the load that stands on its segment. */
  private void followLoad(Best best) {
    Governing from = best.worst();
    Combination combination = from.instance().combination();
    Segment segment = from.station().segment();
    if (combination.moving().isEmpty()
        || responses.stretches(combination.moving().get().load()).stream()
            .noneMatch(stretch -> stretch.touches(segment))) {
      return;
    }
    double[] cuts = withQuarters(segment, places(segment));
    double low = 0;
    double high = responses.analysis().model(segment).length();
    for (double cut : cuts) {
      if (cut < from.station().x() - 1) {
        low = Math.max(low, cut);
      } else if (cut > from.station().x() + 1) {
        high = Math.min(high, cut);
      }
    }
    double[] where = {from.station().x(), best.sign * from.value()};
    List<Combination> alone = List.of(combination);
    PeakPlace.narrow(
        new PeakPlace.Bracket(
            low,
            where[0],
            high,
            best.sign * at(best, segment, low, alone).value(),
            where[1],
            best.sign * at(best, segment, high, alone).value()),
        x -> {
          double value = best.sign * at(best, segment, x, alone).value();
          if (value > where[1]) {
            where[0] = x;
            where[1] = value;
          }
          return value;
        },
        () -> where[1] + NOTHING);
    if (where[0] != from.station().x()) {
      best.take(at(best, segment, where[0], combinations));
    }
  }
}
