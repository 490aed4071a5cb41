package spanledger.behaviour;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.action.ActionCategory;
import spanledger.action.Actions;
import spanledger.action.CategorisedCase;
import spanledger.action.RuleSet;
import spanledger.frame.Frame;
import spanledger.vibration.Masses;
import spanledger.vibration.Vibration;

/** Finds natural frequencies until none below the limits of the rule set can be missing. */
final class FrameVibration {

  /** A segment in two pieces: frequencies are at most 0.5 % too high. */
  private static final int PIECES = 2;

  private static final int FIRST = 8;
  private static final int MOST = 64;

  private FrameVibration() {}

  /** The vibration of a frame with what is always on it and a share of its floor loads. */
  static Optional<Vibration> of(Frame frame, Actions actions, RuleSet rules) {
    Masses masses = masses(actions, share(rules));
    if (masses.parts().isEmpty()) {
      return Optional.empty();
    }
    double wanted =
        Math.max(limit(rules, RuleSet.VERTICAL_FREQUENCY), limit(rules, RuleSet.LATERAL_FREQUENCY));
    Vibration found = Vibration.of(frame, masses, FIRST, PIECES);
    for (int count = 2 * FIRST; count <= MOST && found.provedBelow() <= wanted; count *= 2) {
      found = Vibration.of(frame, masses, count, PIECES);
    }
    return Optional.of(found);
  }

  private static double limit(RuleSet rules, String id) {
    return rules.find(id).map(f -> f.value()).orElse(0.0);
  }

  private static double share(RuleSet rules) {
    return limit(rules, RuleSet.VIBRATING_SHARE);
  }

  private static Masses masses(Actions actions, double share) {
    List<Masses.Part> parts = new ArrayList<>();
    for (CategorisedCase one : actions.cases()) {
      if (one.vertical().isPresent()) {
        continue;
      }
      if (one.category() == ActionCategory.PERMANENT) {
        parts.add(new Masses.Part(one.loads(), 1));
      } else if (share > 0 && isFloorLoad(one)) {
        parts.add(new Masses.Part(one.loads(), share));
      }
    }
    return new Masses(parts);
  }

  private static boolean isFloorLoad(CategorisedCase one) {
    return one.category() == ActionCategory.IMPOSED
        && !one.loads().segmentLoads().isEmpty()
        && one.loads().segmentLoads().stream().allMatch(load -> load.origin().isAreaLoad());
  }
}
