package spanledger.summary;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import spanledger.envelope.Instance;
import spanledger.joint.BracketJoint;
import spanledger.joint.stiffness.AxisStiffness;
import spanledger.joint.stiffness.JointStiffness;
import spanledger.jointdesign.BracketRun;
import spanledger.jointdesign.DescribedStiffness;
import spanledger.jointdesign.FaceRun;
import spanledger.jointdesign.JointEnd;
import spanledger.jointdesign.JointFinding;
import spanledger.jointdesign.JointJudgement;
import spanledger.resistance.joint.ContactAdvice;
import spanledger.resistance.member.Working;

/**
 * What a code found of the joints, for the results file: every member end under its worst check.
 */
final class JointJson {

  private JointJson() {}

  /**
   * The section.
   *
   * @param instance how a combination is written
   */
  static ObjectNode of(JointJudgement judgement, Function<Instance, ObjectNode> instance) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("code", judgement.title());
    Map<String, JointFinding> worst = new TreeMap<>();
    for (JointFinding finding : judgement.findings()) {
      worst.merge(
          finding.end().name(),
          finding,
          (a, b) -> a.governing().value() >= b.governing().value() ? a : b);
    }
    ArrayNode ends = node.putArray("ends");
    worst.values().forEach(finding -> ends.add(end(finding, instance)));
    if (!judgement.tested().isEmpty()) {
      ArrayNode tests = node.putArray("tests");
      TestJson.of(judgement.tested()).forEach(tests::add);
    }
    ArrayNode undescribed = node.putArray("withoutJoint");
    judgement.undescribed().stream().map(JointEnd::name).forEach(undescribed::add);
    ArrayNode kept = node.putArray("stiffnessAsAnalysed");
    for (JointJudgement.Kept one : judgement.kept()) {
      ObjectNode entry = kept.addObject();
      entry.put("end", one.end().name());
      entry.put("what", one.what());
      entry.put("reason", one.why().reason());
      entry.put("source", one.why().source().citation());
    }
    ArrayNode metals = node.putArray("metals");
    for (ContactAdvice advice : judgement.contacts()) {
      ObjectNode one = metals.addObject();
      one.put("metals", advice.words());
      one.put("surroundings", advice.surroundings().words());
      one.put("advice", advice.advice());
      one.put("source", advice.source().citation());
      one.put("confidence", advice.source().confidence().words());
    }
    return node;
  }

  private static ObjectNode end(JointFinding finding, Function<Instance, ObjectNode> instance) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("end", finding.end().name());
    node.put("joint", finding.joint().name());
    node.put("check", finding.faceName() + ": " + finding.use().words());
    node.put("part", finding.part());
    number(node, "utilisation", finding.governing().value());
    node.set("loading", instance.apply(finding.instance()));
    numbers(
        node.putObject("forces"), finding.run().forces(), "P_u", "P_v", "P_w", "C_u", "C_v", "C_w");
    if (finding.joint() instanceof BracketJoint bracket) {
      stiffness(node.putObject("stiffness"), bracket);
    }
    if (!finding.run().brackets().isEmpty()) {
      node.put("sharing", finding.run().bound().words());
      ArrayNode brackets = node.putArray("brackets");
      for (BracketRun bracket : finding.run().brackets()) {
        ObjectNode own = brackets.addObject();
        own.put("bracket", bracket.name());
        numbers(own.putObject("forces"), bracket.share(), "P_u", "P_v", "P_w", "C_u", "C_v", "C_w");
      }
    }
    ArrayNode faces = node.putArray("faces");
    finding.run().faces().forEach(face -> faces.add(face(face)));
    return node;
  }

  /** Bounds in the axes u, v, w; nothing along or about an axis where nothing resists. */
  private static void stiffness(ObjectNode node, BracketJoint bracket) {
    JointStiffness parts = DescribedStiffness.of(bracket);
    bounds(node, "axial", parts.along().get(0));
    bounds(node, "torsion", parts.about().get(0));
    bounds(node, "aboutY", parts.about().get(1));
    bounds(node, "aboutZ", parts.about().get(2));
  }

  private static void bounds(ObjectNode node, String name, Optional<AxisStiffness> axis) {
    if (axis.isPresent()) {
      ObjectNode own = node.putObject(name);
      number(own, "lower", axis.get().lower());
      number(own, "upper", axis.get().upper());
    }
  }

  private static ObjectNode face(FaceRun face) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("face", face.name());
    numbers(node.putObject("forces"), face.forces(), "N", "V_y", "V_z", "T", "M_y", "M_z");
    ArrayNode bolts = node.putArray("bolts");
    for (int i = 0; i < face.demands().size(); i++) {
      ObjectNode bolt = bolts.addObject();
      numbers(bolt, face.shears().get(i), "y", "z", "F_y", "F_z");
      numbers(bolt, face.demands().get(i), "F_v", "F_t");
    }
    ArrayNode keys = node.putArray("keys");
    for (Working half : face.keys()) {
      numbers(keys.addObject(), half, "y", "z", "B");
    }
    number(node, "residual", face.shared().residual());
    return node;
  }

  private static void numbers(ObjectNode node, Working working, String... symbols) {
    for (String symbol : symbols) {
      number(node, symbol, working.value(symbol));
    }
  }

  private static void number(ObjectNode node, String name, double value) {
    if (Double.isFinite(value)) {
      node.put(name, value);
    }
  }
}
