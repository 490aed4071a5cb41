package spanledger.workbook.content;

import java.util.Optional;
import spanledger.behaviour.CombinationBehaviour;
import spanledger.frame.Freedom;
import spanledger.frame.Node;
import spanledger.frame.Segment;
import spanledger.frame.Support;
import spanledger.state.Condition;
import spanledger.state.HoldReport;
import spanledger.state.StateResult;

/** A governing combination solved as a state. */
record StateSolved(int index, CombinationBehaviour combination, StateResult result)
    implements Solved {

  /** A number, as the words of combinations are long; the list of states says which it is. */
  @Override
  public String name() {
    return "state " + (index + 1);
  }

  @Override
  public double movement(Node node, Freedom freedom) {
    return result.movement(node, freedom);
  }

  /** What a support does along one freedom, if it has play or acts one way there. */
  Optional<HoldReport> hold(Support support, Freedom freedom) {
    return named("support of node " + support.node().name() + " " + freedom.words());
  }

  /** What a joint with play does; end 1 or 2, axis y or z. */
  Optional<HoldReport> joint(Segment segment, int end, char axis) {
    Node node = end == 1 ? segment.first() : segment.second();
    return named(
        "joint of member " + segment.name() + " at node " + node.name() + " about " + axis);
  }

  private Optional<HoldReport> named(String name) {
    return result.holds().stream().filter(h -> h.name().equals(name)).findFirst();
  }

  /** Whether a foot is in the air. */
  boolean isLifted(Support support) {
    return hold(support, Freedom.SHIFT_Z).map(h -> h.condition() == Condition.OPEN).orElse(false);
  }
}
