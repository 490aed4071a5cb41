package spanledger.job;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.action.SwayScope;
import spanledger.behaviour.SecondOrder;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;

/** Decodes how a job is to be analysed. */
final class AnalysisDecoder {

  private static final Map<String, SecondOrder> ORDERS =
      Map.of(
          "auto", SecondOrder.AUTO,
          "always", SecondOrder.ALWAYS,
          "never", SecondOrder.NEVER);
  private static final Map<String, List<StiffnessBound>> BOUNDS =
      Map.of(
          "lower", List.of(StiffnessBound.LOWER),
          "upper", List.of(StiffnessBound.UPPER),
          "both", List.of(StiffnessBound.LOWER, StiffnessBound.UPPER));

  private static final Map<String, SwayScope> SWAY =
      Map.of("vertical", SwayScope.VERTICAL, "every", SwayScope.EVERY);

  private final Reading reading;
  private final Values values;

  AnalysisDecoder(Reading reading) {
    this.reading = reading;
    this.values = new Values(reading);
  }

  /** The options; the schema reports what cannot be read. */
  AnalysisOptions decode(Located block) {
    return reading.fields("analysis", block).map(this::options).orElse(AnalysisOptions.USUAL);
  }

  private AnalysisOptions options(Fields fields) {
    Optional<SecondOrder> order =
        fields.find("secondOrder").flatMap(word -> values.word(word, ORDERS));
    Optional<List<StiffnessBound>> bounds =
        fields.find("bounds").flatMap(word -> values.word(word, BOUNDS));
    Optional<SwayScope> sway = fields.find("notionalSway").flatMap(word -> values.word(word, SWAY));
    return new AnalysisOptions(
        order.orElse(AnalysisOptions.USUAL.secondOrder()),
        bounds.orElse(AnalysisOptions.USUAL.bounds()),
        sway.orElse(AnalysisOptions.USUAL.sway()));
  }
}
