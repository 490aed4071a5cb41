package spanledger.verification.procedure;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spanledger.verification.calc.CalcEngine;

/** Any formula gives the same in Java as in LibreOffice Calc. */
class CalcAgreementTest {

  /** Fixed, so the workbook is the same every time. */
  private static final long SEED = 20260101;

  private static final int SAMPLES = 700;

  @TempDir Path folder;

  @Test
  void formulasGiveTheSameInCalc() throws IOException {
    CalcEngine engine = CalcEngine.required();
    List<Sample> samples = samples();

    List<Double> results = new CalcProgram(engine, folder).values(samples);

    List<String> disagreements = new ArrayList<>();
    for (int i = 0; i < SAMPLES; i++) {
      Sample sample = samples.get(i);
      Agreement.disagreement(sample, sample.estimated().orElseThrow(), results.get(i))
          .ifPresent(disagreements::add);
    }
    assertThat(disagreements).isEmpty();
  }

  /** The comparison would be worth little if it could hardly fail. */
  @Test
  void mostSamplesAreComparedSharplyAndManyHaveNoValue() {
    Map<String, Integer> counts = new TreeMap<>();
    for (Sample sample : samples()) {
      counts.merge(Agreement.sharpness(sample.estimated().orElseThrow()), 1, Integer::sum);
    }
    assertThat(counts.get("sharp")).isGreaterThan(SAMPLES / 2);
    assertThat(counts.get("no value")).isGreaterThan(SAMPLES / 20);
  }

  /** Only samples that can be judged: see {@link Estimator}. */
  private static List<Sample> samples() {
    Random random = new Random(SEED);
    RandomSamples source = new RandomSamples(() -> random.nextInt(RandomSamples.DRAWS));
    List<Sample> samples = new ArrayList<>();
    while (samples.size() < SAMPLES) {
      Sample sample = source.next();
      if (sample.estimated().isPresent()) {
        samples.add(sample);
      }
    }
    return samples;
  }
}
