package spanledger.envelope;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Ranks of one effect at evenly spaced places of every lane. */
final class LaneTrials {

  /** A trial farther below the best than this part of it is not worth refining. */
  private static final double NEAR_BEST = 0.05;

  private static final int MOST = 4;

  /** One place tried. */
  record Trial(int lane, int place, double rank) {}

  private final double[][] ranks;

  LaneTrials(int lanes, int places) {
    ranks = new double[lanes][places + 1];
    for (double[] lane : ranks) {
      Arrays.fill(lane, Double.NEGATIVE_INFINITY);
    }
  }

  void offer(int lane, int place, double rank) {
    ranks[lane][place] = Math.max(ranks[lane][place], rank);
  }

  /** The best trials, best first: those near the best that no neighbour on their lane beats. */
  List<Trial> best() {
    double top = Double.NEGATIVE_INFINITY;
    for (double[] lane : ranks) {
      for (double rank : lane) {
        top = Math.max(top, rank);
      }
    }
    List<Trial> best = new ArrayList<>();
    for (int lane = 0; lane < ranks.length; lane++) {
      for (int place = 0; place < ranks[lane].length; place++) {
        double rank = ranks[lane][place];
        if (rank >= top - NEAR_BEST * Math.abs(top) && isPeak(ranks[lane], place)) {
          best.add(new Trial(lane, place, rank));
        }
      }
    }
    best.sort((a, b) -> Double.compare(b.rank(), a.rank()));
    return best.subList(0, Math.min(MOST, best.size()));
  }

  private static boolean isPeak(double[] lane, int place) {
    return (place == 0 || lane[place - 1] <= lane[place])
        && (place == lane.length - 1 || lane[place + 1] <= lane[place]);
  }
}
