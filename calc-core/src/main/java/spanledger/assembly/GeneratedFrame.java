package spanledger.assembly;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spanledger.action.Rail;
import spanledger.action.Surface;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.Node;
import spanledger.frame.Support;

/**
 * The frame that an assembly makes, in the order in which it was described.
 *
 * @param nodes where its members meet
 * @param members its members
 * @param parts the part of each member, by the member's name
 * @param feet its feet, by names such as {@code floor1/foot-north1}
 * @param surfaces its floors
 * @param rails its rails
 * @param flights its flights of stairs
 * @param stretches the stretches of guardrail between neighbouring posts
 */
public record GeneratedFrame(
    List<Node> nodes,
    List<Member> members,
    Map<String, Part> parts,
    Map<String, Support> feet,
    List<Surface> surfaces,
    List<Rail> rails,
    List<Flight> flights,
    List<RailStretch> stretches) {
  public GeneratedFrame {
    nodes = List.copyOf(nodes);
    members = List.copyOf(members);
    parts = Map.copyOf(parts);
    feet = Collections.unmodifiableMap(new LinkedHashMap<>(feet));
    surfaces = List.copyOf(surfaces);
    rails = List.copyOf(rails);
    flights = List.copyOf(flights);
    stretches = List.copyOf(stretches);
  }

  /** The frame with all its feet. */
  public Frame frame() {
    return new Frame(nodes, members, List.copyOf(feet.values()));
  }
}
