package spanledger.verification.section;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every section case agrees within its tolerance. */
class SectionCasesTest {

  @TestFactory
  Stream<DynamicTest> agreesWithWhatIsKnown() {
    return SectionCases.FILES.stream()
        .flatMap(file -> SectionCases.read(file).cases().stream())
        .map(each -> DynamicTest.dynamicTest(each.id(), () -> assertAgrees(each)));
  }

  @Test
  void thereAreEnoughValuesAndEachHasASourceAndAReason() {
    List<SectionCase> cases =
        SectionCases.FILES.stream()
            .flatMap(file -> SectionCases.read(file).cases().stream())
            .toList();
    assertThat(cases).extracting(SectionCase::id).isNotEmpty();
    assertThat(cases.stream().mapToInt(c -> c.expected().size()).sum()).isGreaterThanOrEqualTo(120);
    assertThat(cases)
        .allSatisfy(
            c -> {
              assertThat(c.source().work()).isNotBlank();
              assertThat(c.source().confidence()).isIn("published", "derived", "from memory");
              assertThat(c.expected())
                  .allSatisfy(e -> assertThat(e.toleranceReason()).isNotBlank());
            });
  }

  /** A comparison that cannot fail proves nothing. */
  @Test
  void aWrongValueIsNoticed() {
    SectionCase.Expected wrong =
        new SectionCase.Expected("A", 100, 0.01, false, "for this test", null);
    assertThat(new SectionComparison(wrong, 102).agrees()).isFalse();
    assertThat(new SectionComparison(wrong, Double.NaN).agrees()).isFalse();
    assertThat(new SectionComparison(wrong, 100.9).agrees()).isTrue();
  }

  private static void assertAgrees(SectionCase each) {
    SoftAssertions all = new SoftAssertions();
    for (SectionComparison comparison : SectionComparison.of(each)) {
      all.assertThat(comparison.agrees())
          .as(
              "%s of %s: expected %s, found %s, off by %.3g, tolerance %.3g (%s)",
              comparison.expected().quantity(),
              each.says(),
              comparison.expected().value(),
              comparison.found(),
              comparison.difference(),
              comparison.expected().tolerance(),
              comparison.expected().toleranceReason())
          .isTrue();
    }
    all.assertAll();
  }
}
