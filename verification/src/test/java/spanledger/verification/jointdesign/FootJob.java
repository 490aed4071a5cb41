package spanledger.verification.jointdesign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import spanledger.jointdesign.JointFinding;
import spanledger.verdict.Assessment;
import spanledger.verdict.CheckGroup;
import spanledger.verdict.Status;
import spanledger.verdict.Verdict;
import spanledger.verification.check.AssessedJob;

/**
 * A job of bars on one foot.
 *
 * <p>Loads are permanent, with the factor 1.35 of EN 1990, Table A1.2(B). Bars weigh 4 N against 1
 * kN and more, so statics needs the loads alone.
 */
final class FootJob {

  static final double FACTOR = 1.35;

  /** Of a bar of 1 m, N: 12 mm by 12 mm of 2.7e-6 kg/mm³, g = 9.81 m/s². */
  static final double WEIGHT = 144 * 2.7e-6 * 9.81 * 1000;

  /** A relative tolerance: up to two bars of 4 N are left out beside 1 kN. */
  static final double CLOSE = 6e-3;

  static final String POST = bar("post", "held", "top");
  static final String PLATE =
      """
      "kind": "base-plate", "lengthX": "200 mm", "lengthY": "100 mm", "allowablePressure": "10 MPa",
      "friction": {"coefficient": "0.5", "source": "test"}, "source": "test\"""";

  private FootJob() {}

  static List<String> open(Assessment found) {
    return found.verdicts().stream().filter(FootJob::isOpenJoint).map(Verdict::remark).toList();
  }

  static boolean isOpenJoint(Verdict verdict) {
    return verdict.group() == CheckGroup.JOINTS && verdict.status() == Status.NOT_CHECKED;
  }

  static void assertNear(double found, double expected) {
    assertThat(found).isCloseTo(expected, within(CLOSE * Math.abs(expected)));
  }

  static JointFinding finding(Assessment found, String words) {
    return found.joints().orElseThrow().findings().stream()
        .filter(f -> f.use().words().equals(words))
        .findFirst()
        .orElseThrow(
            () -> new AssertionError(words + " not in " + found.joints().orElseThrow().open()));
  }

  static String bar(String name, String from, String to) {
    return """
        "%s": {"role": "other", "nodes": ["%s", "%s"], "section": "bar", "material": "own",
          "start": "rigid", "end": "rigid"}"""
        .formatted(name, from, to);
  }

  static String load(String node, int x, int y, int z) {
    return "{\"node\": \"%s\", \"force\": [\"%d N\", \"%d N\", \"%d N\"]}".formatted(node, x, y, z);
  }

  static Assessment assess(Path folder, String members, String loads, String foot, String lie) {
    return AssessedJob.of(folder, text(members, loads, foot, lie));
  }

  /**
   * @param foot the kind of foot
   * @param lie how it lies, after the other keys of its use
   */
  static String text(String members, String loads, String foot, String lie) {
    return """
        {"formatVersion": 1,
         "job": {"title": "feet", "reference": "F-1", "date": "2026-11-25"},
         "rules": "en-iso-14122", "combinations": "en-1990",
         "analysis": {"secondOrder": "never"},
         "overrides": {"notional.sway": {"value": "1e-9", "source": "no sway in this test"}},
         "sections": {"bar": {"shape": "solid-rectangle", "depth": "12 mm", "width": "12 mm"}},
         "materials": {"own": {"proofStrength": "170 MPa", "ultimateStrength": "215 MPa",
           "bucklingClass": "A", "youngsModulus": "70 GPa", "shearModulus": "27 GPa",
           "density": "2700 kg/m3", "source": "test"}},
         "nodes": {"held": ["0 mm", "0 mm", "0 mm"], "top": ["0 mm", "0 mm", "1 m"],
           "out": ["800 mm", "0 mm", "800 mm"], "leaning": ["600 mm", "0 mm", "800 mm"],
           "low": ["1 m", "0 mm", "0 mm"], "across": ["1 m", "0 mm", "1 m"]},
         "members": {%s},
         "supports": {"wall": {"node": "held", "type": "fixed"}},
         "userCases": {"load": {"category": "permanent", "loads": [%s]}},
         "jointDetails": {"foot": {%s}},
         "jointChecks": {"code": "en-1999-1-1",
           "feet": [{"supports": ["wall"], "joint": "foot"%s}]}}
        """
        .formatted(members, loads, foot, lie);
  }
}
