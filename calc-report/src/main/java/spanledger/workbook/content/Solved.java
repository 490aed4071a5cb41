package spanledger.workbook.content;

import spanledger.frame.Freedom;
import spanledger.frame.Node;

/** The frame solved once: under one load case, or under a governing combination as a whole. */
interface Solved {

  /** Its place among those on the same sheets, from 0. */
  int index();

  /** What it is called on the sheets. */
  String name();

  /** How a node moves, mm or rad, global axes; a number of the solver. */
  double movement(Node node, Freedom freedom);
}
