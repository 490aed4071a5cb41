package spanledger.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import spanledger.action.Figure;
import spanledger.action.RuleSet;
import spanledger.vibration.Vibration;
import spanledger.vibration.VibrationMode;

/** Judges natural frequencies against the least ones that the rule set asks for. */
final class VibrationVerdicts {

  private static final String SUBJECT = "whole structure";

  private final RuleSet rules;

  VibrationVerdicts(RuleSet rules) {
    this.rules = rules;
  }

  List<Verdict> of(Optional<Vibration> vibration) {
    List<Verdict> verdicts = new ArrayList<>();
    if (vibration.isEmpty()) {
      verdicts.add(
          Verdict.notChecked(CheckGroup.VIBRATION, "vibration", SUBJECT, "nothing weighs on it"));
      return verdicts;
    }
    Vibration found = vibration.get();
    verdicts.add(
        judged(
            "frequency of floors, up and down",
            RuleSet.VERTICAL_FREQUENCY,
            found.firstOfFloors(),
            found));
    verdicts.add(
        judged(
            "frequency of the structure, sideways",
            RuleSet.LATERAL_FREQUENCY,
            found.firstSideways(),
            found));
    return verdicts;
  }

  private Verdict judged(
      String check, String limitId, Optional<VibrationMode> mode, Vibration found) {
    Optional<Figure> limit = rules.find(limitId);
    // Where no such mode was found, none lies below what the count of modes proves.
    double frequency = mode.map(VibrationMode::frequency).orElse(found.provedBelow());
    String words =
        mode.map(m -> m.shape().words()).orElse("no such mode below the frequency shown");
    if (limit.isEmpty()) {
      return Verdict.notChecked(
          CheckGroup.VIBRATION,
          check,
          SUBJECT,
          String.format(
              Locale.ROOT,
              "the rule set has no %s; lowest %.2f Hz: %s",
              limitId,
              frequency,
              words));
    }
    boolean enough = frequency >= limit.get().value();
    return new Verdict(
        CheckGroup.VIBRATION,
        check,
        SUBJECT,
        enough ? Status.PASSED : mode.isPresent() ? Status.FAILED : Status.NOT_CHECKED,
        limit.get().value(),
        frequency,
        "Hz",
        Optional.empty(),
        words);
  }
}
