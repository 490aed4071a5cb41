package spanledger.workbook.content;

import spanledger.frame.Frame;
import spanledger.frame.Segment;
import spanledger.workbook.layout.NumberAt;

/** Where length, axes and stiffness of the segments of a frame stand. */
interface SegmentNumbers {

  /** The frame. */
  Frame frame();

  /** A number of a segment's geometry: L, a cosine or an arm. */
  NumberAt geometry(Segment segment, String symbol);

  /** A number of a segment's stiffness, its properties included. */
  NumberAt stiffness(Segment segment, String symbol);
}
