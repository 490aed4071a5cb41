package spanledger.workbook.content;

import java.util.List;
import spanledger.frame.Freedom;
import spanledger.frame.Node;
import spanledger.frame.Segment;
import spanledger.workbook.layout.NumberAt;

/** Where the loads of a solution stand. */
interface SolvedLoads {

  /** A moment of all loads on a segment, by its symbol, for example m_1z. */
  NumberAt sum(Solved solved, Segment segment, String symbol);

  /** The loads on a node along one freedom; those that are 0 left out. */
  List<NumberAt> onNode(Solved solved, Node node, Freedom freedom);

  /** The loads of load cases. */
  record OfCases(LoadSumSheet sums, NodalLoadTable nodes) implements SolvedLoads {

    @Override
    public NumberAt sum(Solved solved, Segment segment, String symbol) {
      return sums.number(solved, segment, symbol);
    }

    @Override
    public List<NumberAt> onNode(Solved solved, Node node, Freedom freedom) {
      return nodes.on(solved, node, freedom);
    }
  }
}
