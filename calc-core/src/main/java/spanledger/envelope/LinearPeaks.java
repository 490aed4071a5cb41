package spanledger.envelope;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import spanledger.action.Combination;
import spanledger.action.MovingLoad;
import spanledger.analysis.CaseResult;

/**
 * The greatest and the least of one linear effect under combinations: by superposition the free
 * parts that raise (or lower) it act, and the moving load stands where its influence line peaks.
 */
final class LinearPeaks {

  /**
   * A value and the state that gives it.
   *
   * @param state makes the state; few peaks are the worst, and only these need theirs
   */
  record Peak(double value, Supplier<Instance> state) {
    Instance instance() {
      return state.get();
    }
  }

  /** The place of a moving load of factor 1 that gives the effect. */
  private record Place(double value, Standing standing) {}

  private final Responses responses;
  private final LinearEffect effect;
  private final double[] byCase;
  private final IdentityHashMap<MovingLoad, Place> highest = new IdentityHashMap<>();
  private final IdentityHashMap<MovingLoad, Place> lowest = new IdentityHashMap<>();
  private final IdentityHashMap<MovingLoad, double[][]> sampled = new IdentityHashMap<>();

  LinearPeaks(Responses responses, LinearEffect effect) {
    this.responses = responses;
    this.effect = effect;
    effect.prepare(responses);
    List<CaseResult> results = responses.results();
    byCase = new double[results.size()];
    for (int i = 0; i < byCase.length; i++) {
      byCase[i] = effect.ofCase(results.get(i), responses);
    }
  }

  /** The greatest value under a combination. */
  Peak greatest(Combination combination) {
    return peak(combination, 1);
  }

  /** The least value under a combination. */
  Peak least(Combination combination) {
    return peak(combination, -1);
  }

  private Peak peak(Combination combination, int sign) {
    CombinedCases cases = responses.cases(combination);
    double value = cases.fixed(byCase);
    for (int i = 0; i < cases.options(); i++) {
      double part = cases.option(i, byCase);
      if (sign * part > 0) {
        value += part;
      }
    }
    if (combination.moving().isEmpty()) {
      return new Peak(value, () -> instance(combination, sign, Optional.empty()));
    }
    Combination.MovingTerm term = combination.moving().get();
    double factor = combination.factor(term);
    Place place = place(term.load(), factor < 0 ? -sign : sign);
    return new Peak(
        value + factor * place.value(),
        () -> instance(combination, sign, Optional.of(place.standing())));
  }

  private Instance instance(Combination combination, int sign, Optional<Standing> standing) {
    CombinedCases cases = responses.cases(combination);
    List<Combination.Option> pattern = new ArrayList<>();
    for (int i = 0; i < cases.options(); i++) {
      if (sign * cases.option(i, byCase) > 0) {
        pattern.add(combination.options().get(i));
      }
    }
    return new Instance(combination, pattern, standing);
  }

  /** The value in a state that is already known. */
  double at(Instance instance) {
    double value = sum(instance.combination(), instance.terms());
    if (instance.standing().isPresent()) {
      value += instance.standingFactor() * at(instance.standing().get());
    }
    return value;
  }

  private double sum(Combination combination, List<Combination.Term> terms) {
    double sum = 0;
    for (Combination.Term term : terms) {
      sum += combination.factor(term) * byCase[responses.indexOf(term.loadCase())];
    }
    return sum;
  }

  private double at(Standing standing) {
    return effect.of(responses.place(standing.placed()));
  }

  private Place place(MovingLoad load, int sign) {
    return (sign > 0 ? highest : lowest).computeIfAbsent(load, l -> search(l, sign));
  }

  private Place search(MovingLoad load, int sign) {
    double best = Double.NEGATIVE_INFINITY;
    List<Stretch> stretches = responses.stretches(load);
    Standing where = stretches.get(0).standing(stretches.get(0).from());
    double[][] samples = sampled.computeIfAbsent(load, l -> sample(stretches));
    for (int s = 0; s < samples.length; s++) {
      for (int i = 0; i < Quartic.SAMPLES; i++) {
        if (sign * samples[s][i] > best) {
          best = sign * samples[s][i];
          where = stretches.get(s).standing(stretches.get(s).at(i));
        }
      }
    }
    for (int s = 0; s < samples.length; s++) {
      Stretch stretch = stretches.get(s);
      boolean own = false;
      for (Station station : effect.own()) {
        own |= stretch.touches(station.segment());
      }
      // A kinked line may pass above its control points, but not by as much as this.
      double slack = own ? 0.1 * Math.abs(best) : 0;
      if (Quartic.bound(samples[s], sign) + slack > best) {
        for (Standing at : own ? pieces(stretch, sign) : List.of(peak(stretch, samples[s], sign))) {
          double value = sign * at(at);
          if (value > best) {
            best = value;
            where = at;
          }
        }
      }
    }
    return new Place(sign * best, where);
  }

  private double[][] sample(List<Stretch> stretches) {
    double[][] samples = new double[stretches.size()][Quartic.SAMPLES];
    for (int s = 0; s < samples.length; s++) {
      for (int i = 0; i < Quartic.SAMPLES; i++) {
        samples[s][i] = effect.of(stretches.get(s).sample(i));
      }
    }
    return samples;
  }

  private static Standing peak(Stretch stretch, double[] values, int sign) {
    return stretch.standing(
        stretch.from() + Quartic.peak(values, sign) * (stretch.to() - stretch.from()));
  }

  /** Between the places at which the load passes the cut, the line is a polynomial. */
  private List<Standing> pieces(Stretch stretch, int sign) {
    List<Standing> peaks = new ArrayList<>();
    for (Station own : effect.own()) {
      double[] breaks = stretch.crossings(own.segment(), own.x());
      for (int piece = 0; piece + 1 < breaks.length; piece++) {
        double from = Math.min(breaks[piece] + StrengthLook.JUST_PAST, breaks[piece + 1]);
        double to = Math.max(from, breaks[piece + 1] - StrengthLook.JUST_PAST);
        double[] values = new double[Quartic.SAMPLES];
        for (int i = 0; i < values.length; i++) {
          values[i] = at(stretch.standing(from + (to - from) * Quartic.place(i)));
        }
        peaks.add(stretch.standing(from + Quartic.peak(values, sign) * (to - from)));
      }
    }
    return peaks;
  }
}
