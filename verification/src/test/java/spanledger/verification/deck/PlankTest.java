package spanledger.verification.deck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static spanledger.verification.deck.Decked.finding;
import static spanledger.verification.deck.Decked.floor;
import static spanledger.verification.deck.Decked.plank;
import static spanledger.verification.deck.Decked.review;
import static spanledger.verification.deck.Decked.treads;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import spanledger.deck.DeckCalculation;
import spanledger.deck.DeckFinding;
import spanledger.deck.DeckInput;

/** Planks by their section against sums of handbook formulas for a load at one point. */
class PlankTest {

  private static final double E = 70_000;

  private static final double G = 27_000;

  /** The calculation of forces and deflection from which a deflection was judged. */
  private static DeckCalculation bent(List<DeckFinding> findings, String load) {
    DeckCalculation judged =
        finding(findings, "deflection under " + load).result().orElseThrow().calculation();
    return judged.inputs().stream()
        .filter(DeckInput.OfStep.class::isInstance)
        .map(input -> ((DeckInput.OfStep) input).calculation())
        .findFirst()
        .orElseThrow();
  }

  /** By hand, 20 x 200 mm solid, 1 m, 2 kN/m² and 0.1 kN/m² of weight, EN 1990. */
  @Test
  void loadOnAllOfIt() {
    List<DeckFinding> findings = review(floor(plank(20, 200), 1000, 0.0001));

    DeckCalculation bent = bent(findings, "load on all of it");
    double design = (1.35 * 0.1 + 1.5 * 2) * 0.2;
    assertThat(bent.value("M")).isCloseTo(design * 1e6 / 8, within(1e-6));
    assertThat(bent.value("V")).isCloseTo(design * 1000 / 2, within(1e-9));
    double i = 200 * Math.pow(20, 3) / 12;
    double shear = 0.42 * 1e6 / (8 * G * 200 * 20 * 5 / 6);
    assertThat(bent.value("δ")).isCloseTo(5 * 0.42 * 1e12 / (384 * E * i) + shear, within(1e-9));
    double stress = bent.value("M") / (200 * 400 / 6.0);
    double tau = 1.5 * bent.value("V") / (200 * 20);
    double combined = Math.sqrt(stress * stress + 3 * tau * tau);
    DeckFinding strength = finding(findings, "load on all of it");
    // EN 1999-1-1, Table 3.2b: 6063-T6 rod up to 25 mm, 160 MPa; divided by 1.1.
    assertThat(strength.result().orElseThrow().used())
        .isCloseTo(combined / (160 / 1.1), within(1e-9));
  }

  /**
   * A patch is many points: moment, shear and deflection are sums of a b x / L and P b x (L² - b² -
   * x²)/(6 E I L) (handbooks; Roark, 7th ed., Table 8.1, case 1e) over a thousand of them.
   */
  @Property(tries = 50)
  void aPatchIsTheSumOfManyPoints(
      @ForAll @DoubleRange(min = 150, max = 2000) double span,
      @ForAll @DoubleRange(min = 60, max = 400) double width) {
    List<DeckFinding> findings = review(floor(plank(20, width), span, 0));
    DeckCalculation bent = bent(findings, "load at one place");

    double onPlank = 1500 * Math.min(1, width / 200);
    double patch = Math.min(200, span);
    int parts = 1000;
    double i = width * Math.pow(20, 3) / 12;
    double moment = 0;
    double shear = 0;
    double deflection = 0;
    for (int k = 0; k < parts; k++) {
      double along = (k + 0.5) / parts * patch;
      double at = span / 2 - patch / 2 + along;
      double load = onPlank / parts;
      double b = Math.max(at, span - at);
      moment += load * (span - b) / 2;
      shear += load * (span - along) / span;
      double far = Math.min(at, span - at);
      // At mid-span, seen from the support that is farther from the load.
      double x = span / 2;
      deflection += load * far * x * (span * span - far * far - x * x) / (6 * E * i * span);
    }
    double shearArea = width * 20 * 5 / 6;
    // The middle of a thousand parts stands for each: 1e-6 of the sums.
    assertThat(bent.value("M")).isCloseTo(1.5 * moment, within(1.5 * moment * 1e-5));
    assertThat(bent.value("V")).isCloseTo(1.5 * shear, within(1.5 * shear * 1e-5));
    double whole = deflection + moment / (G * shearArea);
    assertThat(bent.value("δ")).isCloseTo(whole, within(whole * 1e-5));
  }

  /** EN ISO 14122-3, from memory: 1.5 kN on 100 mm: a tread of 240 mm takes all of it. */
  @Test
  void aTreadWiderThanThePatchTakesAllOfIt() {
    DeckCalculation bent = bent(review(treads(plank(20, 240), 800, 250)), "load at one place");

    assertThat(bent.value("s")).isEqualTo(1);
    assertThat(bent.value("M")).isCloseTo(1.5 * 1500 * (200 - 100 / 8.0), within(1e-6));
  }

  @Test
  void aPatchThatIsNotStatedIsAPoint() {
    DeckCalculation bent =
        bent(review(floor(plank(20, 60), 800, 0), "as-1657"), "load at one place");

    assertThat(bent.value("s")).isEqualTo(1);
    assertThat(bent.value("M")).isCloseTo(1.5 * 1100 * 200, within(1e-6));
    assertThat(bent.value("V")).isCloseTo(1.5 * 1100, within(1e-9));
  }
}
