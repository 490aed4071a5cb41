package spanledger.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import spanledger.overturning.SlidingCase;
import spanledger.overturning.Standing;
import spanledger.overturning.StandingResult;
import spanledger.overturning.TippingCase;
import spanledger.overturning.TippingEdge;

/** Judges whether the structure tips or slides. */
final class StandingVerdicts {

  /** How checks about a line are called. */
  static final String TIPPING = "tipping about";

  /** How the check against sliding is called. */
  static final String SLIDING = "sliding";

  /** Of more places the first and the last are named; the sheet names all. */
  private static final int NAMED = 3;

  private static final String ALL = "whole structure";

  private final StandingResult result;

  StandingVerdicts(StandingResult result) {
    this.result = result;
  }

  List<Verdict> verdicts() {
    List<Verdict> verdicts = new ArrayList<>();
    if (result.edges().isEmpty()) {
      verdicts.add(
          open(
              "overturning",
              "it stands on fewer than two places; tipping cannot be judged from its feet, unless the"
                  + " base plate of its foot is described, under a support that holds its turns"));
    }
    for (TippingEdge edge : result.edges()) {
      Optional<TippingCase> worst = result.worst(edge);
      if (worst.isEmpty()) {
        verdicts.add(
            Verdict.notChecked(
                CheckGroup.WHOLE_STRUCTURE,
                TIPPING,
                edge.name(),
                "the combination rules have no lines for tipping"));
      } else {
        verdicts.add(tipping(worst.get()));
      }
    }
    result.worstSliding().ifPresent(worst -> verdicts.add(sliding(worst)));
    ballast().ifPresent(verdicts::add);
    return verdicts;
  }

  private Verdict tipping(TippingCase worst) {
    boolean stands = worst.use() <= 1;
    boolean held = result.standing().anchored();
    String remark =
        String.format(
            Locale.ROOT,
            "factor %.2f under %s, %s",
            worst.factor(),
            worst.rule().name(),
            worst.leading());
    if (!stands) {
      remark +=
          held
              ? "; only its anchors keep it from tipping: see uplift of its supports, the anchors are"
                  + " not designed here"
              : "; " + need(result.ballast(worst.edge()));
    }
    return new Verdict(
        CheckGroup.WHOLE_STRUCTURE,
        TIPPING,
        worst.edge().name(),
        stands ? Status.PASSED : held ? Status.NOT_CHECKED : Status.FAILED,
        worst.destabilising(),
        worst.stabilising(),
        "N·mm",
        Optional.empty(),
        remark);
  }

  private String need(double mass) {
    return mass < 0
        ? "no ballast at its places helps"
        : String.format(
            Locale.ROOT, "%.1f kg of ballast needed, %s", mass, places(result.ballastPlaceNames()));
  }

  private static String places(List<String> names) {
    return names.size() == 1
        ? "on " + names.get(0)
        : names.size() <= NAMED
            ? "evenly on " + String.join(", ", names)
            : "evenly on "
                + names.size()
                + " places from "
                + names.get(0)
                + " to "
                + names.get(names.size() - 1);
  }

  private Verdict sliding(SlidingCase worst) {
    Optional<Standing.Friction> friction = result.standing().friction();
    String where = "under " + worst.rule().name() + ", " + worst.leading();
    if (friction.isPresent()) {
      double use = worst.use(friction.get());
      boolean held = result.standing().anchored();
      String remark = where;
      if (use > 1) {
        remark +=
            held
                ? String.format(
                    Locale.ROOT,
                    "; only its anchors keep it from sliding: they take up to %.0f N together",
                    worst.along())
                : "; " + need(result.ballastAgainstSliding().orElse(0.0));
      }
      return new Verdict(
          CheckGroup.WHOLE_STRUCTURE,
          SLIDING,
          ALL,
          use <= 1 ? Status.PASSED : held ? Status.NOT_CHECKED : Status.FAILED,
          worst.friction(),
          friction.get().coefficient(),
          "",
          Optional.empty(),
          remark);
    }
    return open(
        SLIDING,
        String.format(
            Locale.ROOT,
            result.standing().anchored()
                ? "its anchors must hold up to %2$.0f N along the ground, all feet together, or its feet"
                    + " a friction coefficient of %1$.3f; %3$s"
                : "a friction coefficient of %1$.3f is needed (%2$.0f N along the ground); give that of"
                    + " its feet with a source; %3$s",
            worst.friction(),
            worst.along(),
            where));
  }

  private Optional<Verdict> ballast() {
    double mass = result.ballast();
    return mass > 0 && !result.standing().anchored()
        ? Optional.of(
            new Verdict(
                CheckGroup.WHOLE_STRUCTURE,
                "ballast needed",
                ALL,
                Status.DEMAND,
                mass,
                Double.NaN,
                "kg",
                Optional.empty(),
                String.format(
                    Locale.ROOT,
                    "%.1f kg at each of %s",
                    mass / result.ballastPlaces().size(),
                    String.join(", ", result.ballastPlaceNames()))))
        : Optional.empty();
  }

  private static Verdict open(String check, String why) {
    return Verdict.notChecked(CheckGroup.WHOLE_STRUCTURE, check, ALL, why);
  }
}
