package spanledger.verification.behaviour;

import java.util.Locale;
import spanledger.verdict.Assessment;
import spanledger.verdict.Verdict;

/**
 * Small job files whose members are of one bar: A = 1000 mm², I = 1e6 mm⁴ and W = 1e4 mm³ about
 * both axes, shear areas so large that bending alone decides.
 */
public final class StateJob {

  static final double MODULUS = 1e4;

  /** E I, N·mm². */
  static final double RIGIDITY = 70_000 * 1e6;

  /** A · ρ · g, N/mm. */
  static final double WEIGHT = 1000 * 2.7e-6 * 9.80665;

  /** EN 1990, Table A1.2(B): on permanent actions. */
  static final double PERMANENT = 1.35;

  private StateJob() {}

  /** So little notional sway that it does not count beside 1e-6. */
  static final String UPRIGHT = "0.000000001";

  /** The text of a job from its own parts; order says when second order counts. */
  public static String text(
      String sway, String nodes, String members, String supports, String loads, String order) {
    return """
        {"formatVersion": 1,
         "job": {"title": "states", "reference": "S-1", "date": "2026-03-31"},
         "rules": "en-iso-14122", "combinations": "en-1990",
         "overrides": {"floor.point": {"value": "0.001 N", "source": "no load for this case"},
           "notional.sway": {"value": "%s", "source": "this case"}},
         "sections": {"bar": {"shape": "properties", "area": "1000 mm2",
           "shearAreaY": "900000 mm2", "shearAreaZ": "900000 mm2",
           "secondMomentY": "1000000 mm4", "secondMomentZ": "1000000 mm4",
           "torsionConstant": "1000000 mm4", "elasticModulusY": "10000 mm3",
           "elasticModulusZ": "10000 mm3", "torsionModulus": "10000 mm3",
           "thinnestWall": "3 mm", "thickestWall": "3 mm",
           "walls": {"web": "10", "innerFlange": "10"}, "source": "invented for this case"}},
         "materials": {"main": {"alloy": "6063-T6", "form": "hollow-profile"}},
         "nodes": {%s},
         "members": {%s},
         "supports": {%s},
         "userCases": {"load": {"category": "permanent", "loads": [%s]}},
         "analysis": {"secondOrder": "%s"}}
        """
        .formatted(sway, nodes, members, supports, loads, order);
  }

  /** The same with tubes, judged by EN 1999-1-1. */
  public static String byCode(String text) {
    return text.replaceFirst(
            "\"bar\": \\{[^}]*\\}[^}]*\\}",
            "\"bar\": {\"shape\": \"rectangular-hollow\", \"depth\": \"80 mm\","
                + " \"width\": \"80 mm\", \"thickness\": \"4 mm\"}")
        .replaceFirst(
            "\"analysis\"",
            "\"memberChecks\": {\"code\": \"en-1999-1-1\", \"lengths\": [{\"members\":"
                + " [\"*\"], \"modes\": [\"flexural-y\", \"flexural-z\", \"torsional\","
                + " \"lateral-torsional\"], \"timesMember\": \"1\", \"reason\":"
                + " \"invented\"}]}, \"analysis\"")
        .replaceFirst(", \"form\": \"hollow-profile\"", "");
  }

  public static String member(String name, String role, String nodes) {
    return "\"%s\": {\"role\": \"%s\", \"nodes\": [%s], \"section\": \"bar\", \"material\": \"main\","
            .formatted(name, role, nodes)
        + " \"start\": \"rigid\", \"end\": \"rigid\"}";
  }

  public static String force(String node, double x, double z) {
    return String.format(
        Locale.ROOT, "{\"node\": \"%s\", \"force\": [\"%s N\", \"0 N\", \"%s N\"]}", node, x, z);
  }

  static Verdict verdict(Assessment found, String check, String subject) {
    return found.verdicts().stream()
        .filter(v -> v.check().startsWith(check) && v.subject().equals(subject))
        .findFirst()
        .orElseThrow(() -> new AssertionError("No verdict " + check + " on " + subject));
  }
}
