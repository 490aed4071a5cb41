package spanledger.workbook.content;

import java.util.function.Function;
import spanledger.frame.Segment;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;

/** What differs between the solutions that {@link BarTables} proves: holds, forces and loads. */
interface BarRule {

  /** Where the moments and end turns of the loads on a segment stand. */
  interface Loads {

    /** A moment of all loads on a segment, by its symbol, for example m_1z. */
    NumberAt moment(Solved solved, Segment segment, String symbol);

    /** What all loads on a segment turn its ends by, by its symbol, for example t_1z. */
    NumberAt turn(Solved solved, Segment segment, String symbol);
  }

  /** The stretching stiffness in effect, live where a hold acts one way. */
  InputCell stretchingStiffness(Solved solved, Segment segment, NumberAt stretch);

  /** The stretch that is taken up before anything resists. */
  InputCell stretchPlay(Solved solved, Segment segment, NumberAt stretch);

  /** The axial force that bends and softens the segment. */
  InputCell bendingForce(Solved solved, Segment segment, NumberAt own);

  /** How a joint holds: {@code r_y1}, {@code k_y1} ... of the stiffness procedure. */
  InputCell joint(Solved solved, Segment segment, String symbol);

  /** The turn that a joint makes before it resists: {@code j_y1} ... */
  InputCell jointPlay(Solved solved, Segment segment, String symbol);

  /**
   * Writes what is still missing of the loads.
   *
   * @param stiffness the table of stiffnesses under axial force
   * @param row the row of a solution's segment in it
   */
  Loads loads(ProcedureCells stiffness, Function<Solved, Function<Segment, Integer>> row);
}
