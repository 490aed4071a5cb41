package spanledger.summary;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import spanledger.behaviour.CombinationBehaviour;
import spanledger.envelope.Governing;
import spanledger.envelope.Instance;
import spanledger.state.Condition;
import spanledger.verdict.Assessment;
import spanledger.verdict.Status;
import spanledger.verdict.Verdict;
import spanledger.vibration.VibrationMode;

/** The results for other programs, documented in docs/results-file.md. Core units throughout. */
public final class ResultsJson {

  /** The version of the form of the file; raised when a reader would have to change. */
  public static final int FORMAT_VERSION = 1;

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private ResultsJson() {}

  /**
   * The results as JSON text, ending in a line break.
   *
   * @param title the job's title
   * @param inputDigest SHA-256 of the job file, in hexadecimal
   * @param ruleSet id of the rule set
   * @param combinationSet id of the combination set
   */
  public static String of(
      String title,
      String inputDigest,
      String ruleSet,
      String combinationSet,
      Assessment assessment) {
    ObjectNode root = NODES.objectNode();
    root.put("format", "spanledger-results");
    root.put("formatVersion", FORMAT_VERSION);
    root.put("title", title);
    root.put("inputSha256", inputDigest);
    root.put("rules", ruleSet);
    root.put("combinations", combinationSet);
    ArrayNode cautions = root.putArray("cautions");
    Cautions.LINES.forEach(cautions::add);
    ObjectNode counts = root.putObject("counts");
    for (Status status : Status.values()) {
      counts.put(key(status), assessment.count(status));
    }
    ObjectNode proof = root.putObject("proof");
    proof.put("casesSolved", assessment.proof().cases());
    proof.put("freedoms", assessment.proof().freedoms());
    proof.put("worstResidualPerLoad", assessment.proof().worstResidual());
    ArrayNode states = root.putArray("states");
    assessment.behaviour().combinations().forEach(c -> states.add(state(c)));
    ArrayNode modes = root.putArray("vibration");
    assessment.behaviour().vibration().ifPresent(v -> v.modes().forEach(m -> modes.add(mode(m))));
    root.set(
        "forceEnvelope",
        ForceEnvelopeJson.of(
            assessment.forces(),
            cause -> {
              ObjectNode node = NODES.objectNode();
              instance(node, cause);
              return node;
            }));
    assessment
        .joints()
        .ifPresent(
            found ->
                root.set(
                    "joints",
                    JointJson.of(
                        found,
                        cause -> {
                          ObjectNode node = NODES.objectNode();
                          instance(node, cause);
                          return node;
                        })));
    assessment.whole().ifPresent(whole -> root.set("standing", StandingJson.of(whole)));
    ArrayNode verdicts = root.putArray("verdicts");
    assessment.verdicts().forEach(v -> verdicts.add(verdict(v)));
    try {
      return new ObjectMapper()
              .enable(SerializationFeature.INDENT_OUTPUT)
              .writeValueAsString(root)
              .replace("\r\n", "\n")
          + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("A tree of plain nodes can always be written.", e);
    }
  }

  private static ObjectNode state(CombinationBehaviour one) {
    ObjectNode node = NODES.objectNode();
    instance(node, one.instance());
    one.critical()
        .filter(c -> c.buckles())
        .ifPresent(
            c -> {
              node.put("criticalFactor", c.factor());
              node.put("mode", c.mode().words());
            });
    node.put("secondOrder", one.secondOrder().isPresent());
    node.put("isResult", one.byState() && one.result().isPresent());
    one.failure().ifPresent(words -> node.put("failure", words));
    ArrayNode holds = node.putArray("holds");
    one.holds().stream()
        .filter(h -> h.condition() != Condition.BEARS)
        .forEach(h -> holds.add(h.words()));
    return node;
  }

  private static ObjectNode mode(VibrationMode mode) {
    ObjectNode node = NODES.objectNode();
    node.put("frequency", mode.frequency());
    node.put("mode", mode.shape().words());
    return node;
  }

  private static ObjectNode verdict(Verdict verdict) {
    ObjectNode node = NODES.objectNode();
    node.put("group", verdict.group().words());
    node.put("check", verdict.check());
    node.put("subject", verdict.subject());
    node.put("status", key(verdict.status()));
    number(node, "demand", verdict.demand());
    number(node, "capacity", verdict.capacity());
    node.put("unit", verdict.unit());
    number(node, "utilisation", verdict.utilisation());
    verdict.instance().ifPresent(i -> instance(node, i));
    verdict.governing().ifPresent(g -> cut(node, g));
    if (!verdict.remark().isEmpty()) {
      node.put("remark", verdict.remark());
    }
    return node;
  }

  private static void cut(ObjectNode node, Governing governing) {
    ObjectNode cut = node.putObject("cut");
    cut.put("segment", governing.station().segment().name());
    cut.put("x", governing.station().x());
  }

  private static void instance(ObjectNode node, Instance instance) {
    node.put("combination", instance.combination().name());
    if (!instance.combination().options().isEmpty()) {
      ArrayNode loaded = node.putArray("loaded");
      instance.pattern().forEach(option -> loaded.add(option.words()));
    }
    instance
        .standing()
        .ifPresent(
            s -> {
              ObjectNode place = node.putObject("loadStandsAt");
              place.put(s.path().lanes().size() == 1 ? "segment" : "path", s.path().name());
              place.put("at", s.at());
            });
  }

  private static void number(ObjectNode node, String name, double value) {
    if (Double.isFinite(value)) {
      node.put(name, value);
    }
  }

  private static String key(Status status) {
    return switch (status) {
      case PASSED -> "passed";
      case FAILED -> "failed";
      case NOT_CHECKED -> "notChecked";
      case DEMAND -> "demand";
    };
  }
}
