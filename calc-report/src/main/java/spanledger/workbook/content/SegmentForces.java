package spanledger.workbook.content;

import java.util.List;
import spanledger.frame.Freedom;
import spanledger.frame.Node;
import spanledger.frame.Segment;
import spanledger.workbook.layout.NumberAt;

/** Where the forces of segments in a solution stand. */
interface SegmentForces {

  /** An end force of a segment, for example F_z1. */
  NumberAt endForce(Solved solved, Segment segment, String symbol);

  /** What the segments at a node take from it along one freedom. */
  List<NumberAt> takenFrom(Solved solved, Node node, Freedom freedom);
}
