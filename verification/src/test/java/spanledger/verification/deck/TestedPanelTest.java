package spanledger.verification.deck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static spanledger.verification.deck.Decked.allowable;
import static spanledger.verification.deck.Decked.finding;
import static spanledger.verification.deck.Decked.floor;
import static spanledger.verification.deck.Decked.review;
import static spanledger.verification.deck.Decked.row;
import static spanledger.verification.deck.Decked.tested;
import static spanledger.verification.deck.Decked.treads;
import static spanledger.verification.deck.Decked.value;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import spanledger.deck.DeckFinding;
import spanledger.deck.DeckUse;
import spanledger.deck.PanelRow;
import spanledger.deck.TestedPanel;

/** Tables of tested panels: how they are read, and what is not read from them. */
class TestedPanelTest {

  private static final String AREA = "load on all of it";
  private static final String POINT = "load at one place";

  /** Rounding of a few operations. */
  private static final double DIGITS = 1e-12;

  /** A row as a panel of bending strength M per width and F·L per panel has it. */
  private static PanelRow bending(double span) {
    return row(span, 8 * 1200.0 / (span * span), 4 * 600_000.0 / span);
  }

  /** Closed form: q = 8 m/L² and P = 4 M/L of a simple beam, at a span between two rows. */
  @Test
  void aPanelThatBendingLimitsIsReadExactly() {
    TestedPanel panel = allowable(bending(800), bending(1200));

    List<DeckFinding> findings = review(floor(panel, 950, 0));

    assertThat(value(finding(findings, AREA), "q_R"))
        .isCloseTo(8 * 1200.0 / (950 * 950), within(DIGITS));
    assertThat(value(finding(findings, POINT), "P_R")).isCloseTo(4 * 600_000.0 / 950, within(1e-9));
  }

  /** By hand: loads that hardly fall: the chord of q, which is less, and that of P L. */
  @Test
  void aPanelThatSomethingElseLimitsIsReadByTheStraightLine() {
    TestedPanel panel = allowable(row(800, 0.010, 5000), row(1000, 0.0098, 4900));

    List<DeckFinding> findings = review(floor(panel, 900, 0));

    assertThat(value(finding(findings, AREA), "q_R")).isCloseTo(0.0099, within(DIGITS));
    assertThat(value(finding(findings, POINT), "P_R"))
        .isCloseTo((5000 * 800 + 4900 * 1000) / 2.0 / 900, within(1e-9));
  }

  @Test
  void aSpanOfARowGivesTheRow() {
    TestedPanel panel =
        allowable(row(600, 0.017, 4200), row(800, 0.0096, 3200), row(1000, 0.006, 2550));

    for (PanelRow row : panel.rows()) {
      List<DeckFinding> findings = review(floor(panel, row.span(), 0));

      assertThat(value(finding(findings, AREA), "q_R")).isCloseTo(row.uniform(), within(DIGITS));
      assertThat(value(finding(findings, POINT), "P_R"))
          .isCloseTo(row.point().orElseThrow(), within(1e-9));
    }
  }

  /** Whatever limits the panel, at any power of the span, the reading lies in reach of the rows. */
  @Property(tries = 200)
  void noReadingLeavesTheRowsNorTheStraightLine(
      @ForAll @DoubleRange(min = 0, max = 4) double power,
      @ForAll @DoubleRange(min = 300, max = 1500) double first,
      @ForAll @DoubleRange(min = 1.05, max = 2) double ratio,
      @ForAll @DoubleRange(min = 0, max = 1) double share) {
    double second = first * ratio;
    double least = 0.01 * Math.pow(ratio, -power);
    TestedPanel panel = allowable(row(first, 0.01, 4000), row(second, least, 3000));
    double span = Math.min(first + share * (second - first), second);

    double read = value(finding(review(floor(panel, span, 0)), AREA), "q_R");

    assertThat(read).isBetween(least * (1 - 1e-9), 0.01 * (1 + 1e-9));
    double chord = 0.01 + (least - 0.01) * (span - first) / (second - first);
    assertThat(read).isLessThanOrEqualTo(chord * (1 + 1e-9));
  }

  /**
   * What the theory page says of panels limited by deflection (load as 1/L³): between spans in the
   * ratio 1 to 1.25 the reading is above the true load by at most 1 %, the chord by more.
   */
  @Test
  void betweenCloseRowsAPanelThatDeflectionLimitsIsReadWithinOnePercent() {
    TestedPanel panel = allowable(row(1000, 0.01, 4000), row(1250, 0.01 / Math.pow(1.25, 3), 3000));
    double worst = 0;
    double worstChord = 0;
    for (double span = 1000; span <= 1250; span += 5) {
      double truth = 0.01 / Math.pow(span / 1000, 3);
      DeckFinding found = finding(review(floor(panel, span, 0)), AREA);
      worst = Math.max(worst, value(found, "q_R") / truth - 1);
      worstChord = Math.max(worstChord, value(found, "q_t") / truth - 1);
    }

    assertThat(worst).isBetween(0.005, 0.014);
    assertThat(worstChord).isGreaterThan(0.05);
  }

  /** By hand: allowable 9.6 kN/m² and 3.2 kN; EN ISO 14122: 2 kN/m², 1.5 kN; weight 0.12 kN/m². */
  @Test
  void allowableValuesMeetLoadsWithoutFactors() {
    TestedPanel panel = allowable(row(600, 0.017, 4200), row(800, 0.0096, 3200));

    List<DeckFinding> findings = review(floor(panel, 800, 0.00012));

    assertThat(value(finding(findings, AREA), "η_panel")).isCloseTo(2.12 / 9.6, within(1e-12));
    assertThat(value(finding(findings, POINT), "η_panel"))
        .isCloseTo(1.5 / 3.2 + 0.12 / 9.6, within(1e-12));
  }

  /** By hand: EN 1990, 1.35 and 1.5; resistances divided by 1.25. */
  @Test
  void characteristicValuesMeetFactoredLoads() {
    TestedPanel panel =
        tested(false, 1.25, Optional.empty(), row(600, 0.017, 4200), row(800, 0.0096, 3200));

    List<DeckFinding> findings = review(floor(panel, 800, 0.00012));

    double resistance = 9.6 / 1.25;
    assertThat(value(finding(findings, AREA), "η_panel"))
        .isCloseTo((1.35 * 0.12 + 1.5 * 2) / resistance, within(1e-12));
    assertThat(value(finding(findings, POINT), "η_panel"))
        .isCloseTo(1.5 * 1.5 / (3.2 / 1.25) + 1.35 * 0.12 / resistance, within(1e-12));
  }

  /** By hand: the table says L/200 at 9.6 kN/m², so 2.12/9.6 of 4 mm; the limit is L/200, too. */
  @Test
  void deflectionsAreAsTheirLoads() {
    TestedPanel panel =
        tested(true, 1, Optional.of(1.0 / 200), row(600, 0.017, 4200), row(800, 0.0096, 3200));

    List<DeckFinding> findings = review(floor(panel, 800, 0.00012));

    DeckFinding area = finding(findings, "deflection under load on all of it");
    assertThat(value(area, "δ_rel")).isCloseTo(4 * 2.12 / 9.6, within(1e-9));
    assertThat(value(area, "η_deflection")).isCloseTo(2.12 / 9.6, within(1e-12));
    DeckFinding point = finding(findings, "deflection under load at one place");
    assertThat(value(point, "δ_rel")).isCloseTo(4 * (1.5 / 3.2 + 0.12 / 9.6), within(1e-9));
  }

  /** EN ISO 14122-3, from memory: treads deflect 1/300 of their span and at most 6 mm. */
  @Test
  void treadsKeepTheirOwnLimits() {
    TestedPanel panel =
        tested(true, 1, Optional.of(1.0 / 200), row(600, 0.017, 4200), row(2400, 0.0096, 3200));

    assertThat(
            value(
                finding(review(treads(panel, 800, 250)), "deflection under load at one place"),
                "δ_lim"))
        .isCloseTo(800 / 300.0, within(1e-12));
    assertThat(
            value(
                finding(review(treads(panel, 2000, 250)), "deflection under load at one place"),
                "δ_lim"))
        .isEqualTo(6);
  }

  @Test
  void nothingIsReadBeyondATable() {
    TestedPanel panel = allowable(row(600, 0.017, 4200), row(800, 0.0096, 3200));

    for (double span : new double[] {599.9, 800.1}) {
      List<DeckFinding> findings = review(floor(panel, span, 0));

      assertThat(findings).hasSize(4).allMatch(f -> f.result().isEmpty());
      assertThat(findings).allMatch(f -> f.remark().contains("outside the table of panel grating"));
    }
  }

  @Test
  void aSmallerOrUnknownPatchLeavesTheLoadAtOnePlaceOpen() {
    PanelRow[] rows = {row(600, 0.017, 4200), row(800, 0.0096, 3200)};
    DeckUse wide = floor(allowable(rows), 700, 0);

    assertThat(finding(review(wide, "en-iso-14122"), POINT).result()).isPresent();
    assertThat(finding(review(wide, "as-1657"), POINT).remark()).contains("deck.point-patch");
    // OSHA's tread load stands on 2 in, less than the 100 mm of the test.
    assertThat(finding(review(treads(allowable(rows), 700, 250), "osha-1910"), POINT).remark())
        .contains("tested on a patch of 100 mm, but the load stands on 51 mm");
  }

  @Test
  void deflectionsThatATableLacksAreNotChecked() {
    TestedPanel panel = allowable(row(600, 0.017, 4200), row(800, 0.0096, 3200));

    assertThat(finding(review(floor(panel, 700, 0)), "deflection under load on all of it").remark())
        .contains("says nothing of it");
  }

  @Test
  void anOverhangIsSaid() {
    TestedPanel panel = allowable(row(600, 0.017, 4200), row(800, 0.0096, 3200));
    DeckUse use = new DeckUse("floor", panel, DeckUse.Kind.FLOOR, 700, "", 250, 0, 0);

    assertThat(finding(review(use), "overhang").remark()).contains("250 mm beyond");
  }
}
