package spanledger.action;

import java.util.ArrayList;
import java.util.List;
import spanledger.frame.Segment;
import spanledger.frame.Vector;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * What a load per length puts on a member end that stands back from its node: all that lies between
 * the node and the end. Its arm about the end is left out; about the node it is taken as the whole
 * way, which is on the safe side.
 */
public final class LoadBeyondEnd {

  /** Inputs q, l; step F (N). */
  public static final Procedure PROCEDURE = procedure();

  private static final CompiledProcedure COMPILED = PROCEDURE.compile();

  private LoadBeyondEnd() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("load-beyond-end", "Load between a node and a member end");
    var intensity = p.input("q", "load per length", Dimension.LINE_LOAD);
    var length = p.input("l", "from the node to the end", Dimension.LENGTH, Domain.POSITIVE);
    p.step(
        "F",
        "force on the end",
        Dimension.FORCE,
        intensity.times(length),
        Source.derived("Statics: what lies over the joint stands on the member end"));
    return p.build();
  }

  /**
   * The forces on the two ends of a segment, in global axes; none where an end does not stand back.
   *
   * @param intensity N/mm
   * @param before what the load covers before the segment's start, mm
   * @param after what it covers after the segment's end, mm
   */
  static List<SegmentLoad> of(
      Segment segment,
      Vector direction,
      LoadOrigin origin,
      double intensity,
      double before,
      double after) {
    List<SegmentLoad> loads = new ArrayList<>();
    add(loads, segment, direction, origin, intensity, before, 0);
    add(loads, segment, direction, origin, intensity, after, segment.length());
    return loads;
  }

  private static void add(
      List<SegmentLoad> loads,
      Segment segment,
      Vector direction,
      LoadOrigin origin,
      double intensity,
      double length,
      double at) {
    if (length > 0) {
      loads.add(
          new SegmentLoad.Point(
              segment,
              LoadAxes.GLOBAL,
              direction,
              new LoadOrigin.BeyondEnd(origin, length),
              COMPILED.run(intensity, length)[COMPILED.slot("F")],
              at));
    }
  }
}
