package spanledger.verification.procedure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.RandomDistribution;
import net.jqwik.api.lifecycle.AfterProperty;
import net.jqwik.api.statistics.Statistics;
import net.jqwik.api.statistics.StatisticsReport;

/** Any formula gives the same in Java as in the evaluator of Apache POI. */
class PoiAgreementProperties {

  private final PoiProgram poi = new PoiProgram();

  @Provide
  Arbitrary<Sample> samples() {
    return Arbitraries.integers()
        .between(0, RandomSamples.DRAWS - 1)
        .withDistribution(RandomDistribution.uniform())
        .list()
        .ofSize(300)
        .map(PoiAgreementProperties::sample);
  }

  /** When the draws are used up the rest is zeros: the simplest there is. */
  private static Sample sample(List<Integer> draws) {
    Iterator<Integer> each = draws.iterator();
    return new RandomSamples(() -> each.hasNext() ? each.next() : 0).next();
  }

  @AfterProperty
  void close() {
    poi.close();
  }

  @StatisticsReport(StatisticsReport.StatisticsReportMode.OFF)
  @Property(tries = 2000, edgeCases = EdgeCasesMode.NONE)
  void formulasGiveTheSameInPoi(@ForAll("samples") Sample sample) {
    // The property would be worth little if most samples could not be judged.
    Statistics.label("judged")
        .collect(judged(sample))
        .coverage(
            c -> {
              c.check("sharp").percentage(p -> p > 50);
              c.check("no value").percentage(p -> p > 5);
            });
  }

  private String judged(Sample sample) {
    Optional<Estimate> estimate = sample.estimated();
    if (estimate.isEmpty()) {
      return "not";
    }
    double result = poi.value(sample);
    assertThat(Agreement.disagreement(sample, estimate.get(), result)).isEmpty();
    return Agreement.sharpness(estimate.get());
  }
}
