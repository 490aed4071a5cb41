package spanledger.summary;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import spanledger.action.Figure;
import spanledger.envelope.Instance;
import spanledger.joint.BracketJoint;
import spanledger.joint.stiffness.AxisStiffness;
import spanledger.joint.stiffness.JointStiffness;
import spanledger.jointdesign.AnchorDemand;
import spanledger.jointdesign.BracketRun;
import spanledger.jointdesign.DescribedStiffness;
import spanledger.jointdesign.FaceRun;
import spanledger.jointdesign.JointEnd;
import spanledger.jointdesign.JointFinding;
import spanledger.jointdesign.JointJudgement;
import spanledger.jointdesign.JointRun;
import spanledger.resistance.joint.ContactAdvice;
import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.Working;

/**
 * What a code found of the joints, for the results file: every member end under its worst check.
 */
final class JointJson {

  /** A check that no load changes is the worst only where there is no other. */
  private static final Comparator<JointFinding> LOADS_FIRST =
      Comparator.comparing(JointFinding::hangsOnLoads)
          .thenComparingDouble(finding -> finding.governing().value());

  /** Uses below this are rounding. */
  private static final double NOTHING = 1e-9;

  private JointJson() {}

  /**
   * The section.
   *
   * @param instance how a combination is written
   */
  static ObjectNode of(JointJudgement judgement, Function<Instance, ObjectNode> instance) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("code", judgement.title());
    ArrayNode replaced = node.putArray("replacedFigures");
    judgement.figures().ifPresent(figures -> replaced(replaced, figures));
    Map<String, List<JointFinding>> byEnd = new TreeMap<>();
    for (JointFinding finding : judgement.findings()) {
      byEnd.computeIfAbsent(finding.end().name(), e -> new ArrayList<>()).add(finding);
    }
    ArrayNode ends = node.putArray("ends");
    byEnd.values().forEach(own -> ends.add(end(own, instance)));
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
    ArrayNode anchors = node.putArray("anchors");
    for (AnchorDemand demand : judgement.anchors()) {
      ObjectNode one = anchors.addObject();
      one.put("foot", demand.foot());
      one.put("anchor", demand.anchor());
      one.put("extreme", demand.ofTension() ? "tension" : "shear");
      number(one, "y", demand.first());
      number(one, "z", demand.second());
      number(one, "tension", demand.tension());
      number(one, "shear", demand.shear());
      number(one, "shearY", demand.shearFirst());
      number(one, "shearZ", demand.shearSecond());
      one.set("loading", instance.apply(demand.instance()));
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

  /** Figures of the code in whose place the job has others. */
  private static void replaced(ArrayNode node, CodeFigures figures) {
    for (Figure before : new TreeMap<>(figures.replaced()).values()) {
      Figure used = figures.figure(before.id());
      ObjectNode one = node.addObject();
      one.put("figure", used.id());
      one.put("value", used.text());
      one.put("inPlaceOf", before.text());
      one.put("source", used.source().citation());
    }
  }

  /**
   * A member end.
   *
   * @param own its findings
   */
  private static ObjectNode end(List<JointFinding> own, Function<Instance, ObjectNode> instance) {
    JointFinding worst = own.stream().max(LOADS_FIRST).orElseThrow();
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("end", worst.end().name());
    node.put("joint", worst.joint().name());
    check(node, worst);
    if (worst.joint() instanceof BracketJoint bracket) {
      stiffness(node.putObject("stiffness"), bracket);
    }
    List<JointRun> runs = new ArrayList<>(List.of(worst.run()));
    ArrayNode checks = node.putArray("checks");
    for (JointFinding finding : own) {
      ObjectNode one = checks.addObject();
      check(one, finding);
      if (finding.hangsOnLoads() && !(finding.governing().value() < NOTHING)) {
        one.put("loading", place(runs, finding.run()));
      }
    }
    ArrayNode loadings = node.putArray("loadings");
    for (JointRun run : runs) {
      ObjectNode one = loadings.addObject();
      one.set("loading", instance.apply(run.instance()));
      numbers(one.putObject("forces"), run.forces(), "P_u", "P_v", "P_w", "C_u", "C_v", "C_w");
      if (!run.brackets().isEmpty()) {
        one.put("sharing", run.bound().words());
        ArrayNode brackets = one.putArray("brackets");
        run.brackets().forEach(bracket -> brackets.add(bracket(bracket)));
      }
      ArrayNode faces = one.putArray("faces");
      run.faces().forEach(face -> faces.add(face(face)));
    }
    return node;
  }

  private static ObjectNode bracket(BracketRun bracket) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("bracket", bracket.name());
    numbers(node.putObject("forces"), bracket.share(), "P_u", "P_v", "P_w", "C_u", "C_v", "C_w");
    return node;
  }

  private static void check(ObjectNode node, JointFinding finding) {
    node.put("check", finding.faceName() + ": " + finding.use().words());
    node.put("part", finding.part());
    number(node, "utilisation", finding.governing().value());
  }

  /** The place of a run, which is added if it is new; all findings under it have the same one. */
  private static int place(List<JointRun> runs, JointRun run) {
    for (int i = 0; i < runs.size(); i++) {
      if (runs.get(i).name().equals(run.name()) && runs.get(i).faces().equals(run.faces())) {
        return i;
      }
    }
    runs.add(run);
    return runs.size() - 1;
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
