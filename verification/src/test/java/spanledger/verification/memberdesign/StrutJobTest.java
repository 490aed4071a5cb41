package spanledger.verification.memberdesign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spanledger.resistance.member.BucklingMode;
import spanledger.resistance.member.MemberCase;
import spanledger.section.SectionProperties;
import spanledger.verdict.Assessment;
import spanledger.verdict.CheckGroup;
import spanledger.verdict.Status;
import spanledger.verdict.Verdict;
import spanledger.verification.check.AssessedJob;

/**
 * A strut from job file to verdict.
 *
 * <p>The published value: square tube 70 x 70 x 1.9, f_o 200 N/mm², 1 m long, pinned, γ_M1 = 1.0:
 * N_b,Rd = 73.8 kN (T. Höglund, TALAT Lecture 2301, European Aluminium Association, 1999, Example
 * 5.1). It takes the area between corners of the midline; the program takes the whole area, which
 * is why 2 % are allowed here.
 */
class StrutJobTest {

  private static final double PUBLISHED = 73.8e3;

  /** EN 1990, Table A1.2(B): on permanent actions. */
  private static final double PERMANENT = 1.35;

  @TempDir Path folder;

  @Test
  void atThePublishedResistanceTheStrutIsJustUsedUp() {
    Assessment found =
        assess(
            "1000 mm",
            PUBLISHED / PERMANENT,
            "\"shiftX\": \"fixed\", \"shiftY\": \"fixed\", \"turnZ\": \"fixed\"",
            "\"timesMember\": \"1\"",
            "");

    Verdict buckling = verdict(found, "flexural buckling");

    assertThat(buckling.utilisation()).isCloseTo(1, within(0.02));
    assertThat(found.verdicts()).noneMatch(v -> v.check().equals("member buckling"));
  }

  @Test
  void aCantileverColumnGetsTwiceItsLengthFromTheBucklingOfTheFrame() {
    Assessment found = assess("1000 mm", 10_000, "", "\"fromFrameBuckling\": true", "");

    MemberCase strut = found.members().orElseThrow().uses().get(0).prepared().member();
    double length = strut.lengths().get(BucklingMode.FLEXURAL_Y).length();

    // Euler's second case with shear: S. P. Timoshenko and J. M. Gere, Theory of Elastic Stability,
    // 2nd ed., 1961, 2.17 (from memory): 1 / N_cr = 1 / N_E + 1 / (G A_s).
    SectionProperties tube = strut.section().properties();
    double euler = Math.PI * Math.PI * 70_000 * tube.secondMomentY() / (2000.0 * 2000.0);
    double shear = strut.alloy().shearModulus() * tube.shearAreaZ();
    assertThat(length).isCloseTo(2000 * Math.sqrt(1 + euler / shear), within(2.0));
  }

  @Test
  void aWeldWithoutAPlaceIsNeverPassed() {
    Assessment found =
        assess(
            "1000 mm",
            1000,
            "",
            "\"timesMember\": \"2\"",
            ", \"welds\": [{\"members\": [\"strut\"], \"name\": \"foot-plate\","
                + " \"method\": \"mig\", \"source\": \"drawing 1\"}]");

    List<Verdict> byCode =
        found.verdicts().stream().filter(v -> v.group() == CheckGroup.MEMBER_RESISTANCE).toList();

    assertThat(byCode)
        .singleElement()
        .satisfies(
            verdict -> {
              assertThat(verdict.status()).isEqualTo(Status.NOT_CHECKED);
              assertThat(verdict.remark()).contains("foot-plate").contains("place");
            });
  }

  @Test
  void softenedMetalAtTheWeldOfTheFootWeakensTheColumn() {
    Assessment plain = assess("1000 mm", 10_000, "", "\"timesMember\": \"2\"", "");
    Assessment welded =
        assess(
            "1000 mm",
            10_000,
            "",
            "\"timesMember\": \"2\"",
            ", \"welds\": [{\"members\": [\"strut\"], \"name\": \"foot-plate\", \"across\": \"0 mm\","
                + " \"method\": \"mig\", \"source\": \"drawing 1\"}]");

    assertThat(greatest(welded)).isGreaterThan(greatest(plain));
  }

  private static double greatest(Assessment found) {
    return found.verdicts().stream()
        .filter(v -> v.group() == CheckGroup.MEMBER_RESISTANCE)
        .mapToDouble(Verdict::utilisation)
        .max()
        .orElseThrow();
  }

  private static Verdict verdict(Assessment found, String check) {
    return found.verdicts().stream()
        .filter(v -> v.group() == CheckGroup.MEMBER_RESISTANCE)
        .filter(v -> v.check().startsWith(check))
        .findFirst()
        .orElseThrow();
  }

  /** A strut on a base that holds it fully if nothing holds its top, and as a pin otherwise. */
  private Assessment assess(String height, double load, String top, String length, String welds) {
    String base = top.isEmpty() ? "fixed" : "pinned";
    String head = top.isEmpty() ? "" : ", \"head\": {\"node\": \"top\", " + top + "}";
    String text =
        """
        {"formatVersion": 1,
         "job": {"title": "strut", "reference": "S-1", "date": "2026-03-31"},
         "rules": "en-iso-14122", "combinations": "en-1990",
         "sections": {"tube": {"shape": "rectangular-hollow", "depth": "70 mm", "width": "70 mm",
           "thickness": "1.9 mm"}},
         "materials": {"main": {"alloy": "6063-T66"}},
         "nodes": {"foot": ["0 mm", "0 mm", "0 mm"], "top": ["0 mm", "0 mm", "%s"]},
         "members": {"strut": {"role": "leg", "nodes": ["foot", "top"], "section": "tube",
           "material": "main", "start": "rigid", "end": "rigid"}},
         "supports": {"base": {"node": "foot", "type": "%s"}%s},
         "userCases": {"load": {"category": "permanent", "loads": [
           {"node": "top", "force": ["0 N", "0 N", "-%s N"]}]}},
         "memberChecks": {"code": "en-1999-1-1",
           "figures": {"gamma.M1": {"value": "1.0", "source": "as in the published example"}},
           "lengths": [{"members": ["*"], "modes": ["flexural-y", "flexural-z"], %s,
             "reason": "pinned ends"},
             {"members": ["*"], "modes": ["flexural-y", "flexural-z", "torsional",
             "lateral-torsional"], "timesMember": "1", "reason": "no twist at its ends"}]%s}}
        """
            .formatted(height, base, head, Double.toString(load), length, welds);
    return AssessedJob.of(folder, text);
  }
}
