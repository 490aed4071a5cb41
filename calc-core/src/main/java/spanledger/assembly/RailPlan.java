package spanledger.assembly;

import java.util.List;

/**
 * Where the guardrail of a side is interrupted and where its rail posts stand.
 *
 * @param side the side
 * @param gaps its gates and openings, from its beginning
 * @param posts places of rail posts that stand on the floor alone, from its beginning, mm
 */
record RailPlan(Side side, List<RailGap> gaps, List<Double> posts) {
  RailPlan {
    gaps = List.copyOf(gaps);
    posts = List.copyOf(posts);
  }
}
