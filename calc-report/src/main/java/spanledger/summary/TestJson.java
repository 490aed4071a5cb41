package spanledger.summary;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spanledger.jointdesign.JointTests;
import spanledger.jointdesign.JointTests.Specimen;
import spanledger.jointdesign.TestedEnd;
import spanledger.resistance.member.Working;

/** Tests of joints for the results file: what each specimen did, and the characteristic values. */
final class TestJson {

  private TestJson() {}

  /** A node for each series of tests, in the order of the frame. */
  static List<ObjectNode> of(List<TestedEnd> tested) {
    Map<JointTests, List<TestedEnd>> series = new LinkedHashMap<>();
    tested.forEach(end -> series.computeIfAbsent(end.tests(), tests -> new ArrayList<>()).add(end));
    List<ObjectNode> nodes = new ArrayList<>();
    series.forEach((tests, ends) -> nodes.add(node(tests, ends)));
    return nodes;
  }

  private static ObjectNode node(JointTests tests, List<TestedEnd> ends) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("tests", tests.joint().name());
    node.put("source", tests.joint().source().citation());
    ArrayNode turns = node.putArray("turns");
    for (TestedEnd end : ends) {
      turns.add(end.end().name() + ", " + end.turn().words());
    }
    ArrayNode specimens = node.putArray("specimens");
    for (Specimen specimen : tests.specimens()) {
      ObjectNode one = specimens.addObject();
      one.put("specimen", specimen.fit().specimen());
      one.put("file", specimen.file());
      one.put("slip", specimen.fit().play());
      one.put("stiffness", specimen.fit().stiffness());
      one.put("moment", specimen.fit().resisted());
      one.put("missed", specimen.fit().scatter());
    }
    property(node.putObject("slip"), tests.play());
    property(node.putObject("stiffness"), tests.stiffness());
    property(node.putObject("moment"), tests.moment());
    tests.partialFactor().ifPresent(factor -> node.put("partialFactor", factor.value()));
    return node;
  }

  private static void property(ObjectNode node, Working run) {
    node.put("mean", run.value("m"));
    node.put("factor", run.value("k_n"));
    node.put("lower", run.value("X_low"));
    node.put("upper", run.value("X_high"));
  }
}
