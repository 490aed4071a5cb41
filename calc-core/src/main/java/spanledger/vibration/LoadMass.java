package spanledger.vibration;

import spanledger.action.NodalLoad;
import spanledger.action.SegmentLoad;
import spanledger.action.SelfWeight;
import spanledger.frame.Segment;
import spanledger.procedure.CompiledProcedure;

/** The mass of a load, where it goes in a divided frame. */
public sealed interface LoadMass {

  /** The load case, with the share of it that takes part. */
  Masses.Part part();

  /**
   * A distributed load on a piece.
   *
   * @param piece in the divided frame
   * @param from where the piece begins, mm from the segment's start
   * @param to where it ends
   * @param mass kg
   */
  record Spread(
      Masses.Part part,
      SegmentLoad.Distributed load,
      Segment piece,
      double from,
      double to,
      double mass)
      implements LoadMass {

    private static final CompiledProcedure COMPILED = LoadMassProcedures.SPREAD.compile();

    static Spread of(
        Masses.Part part, SegmentLoad.Distributed load, Segment piece, double from, double to) {
      double[] values =
          COMPILED.run(
              load.intensityFrom(),
              load.intensityTo(),
              load.from(),
              load.to(),
              load.direction().z(),
              from,
              to,
              part.share(),
              SelfWeight.GRAVITY);
      return new Spread(part, load, piece, from, to, values[COMPILED.slot("m")]);
    }
  }

  /**
   * A point load on a piece.
   *
   * @param piece in the divided frame
   * @param from where the piece begins, mm from the segment's start
   * @param to where it ends
   * @param first kg at the piece's first node
   * @param second kg at its second node
   */
  record Point(
      Masses.Part part,
      SegmentLoad.Point load,
      Segment piece,
      double from,
      double to,
      double first,
      double second)
      implements LoadMass {

    private static final CompiledProcedure COMPILED = LoadMassProcedures.POINT.compile();

    static Point of(
        Masses.Part part, SegmentLoad.Point load, Segment piece, double from, double to) {
      double[] values =
          COMPILED.run(
              load.force(),
              load.at(),
              load.direction().z(),
              from,
              to,
              part.share(),
              SelfWeight.GRAVITY);
      return new Point(
          part, load, piece, from, to, values[COMPILED.slot("m_1")], values[COMPILED.slot("m_2")]);
    }
  }

  /**
   * A load on a node.
   *
   * @param mass kg
   */
  record OnNode(Masses.Part part, NodalLoad load, double mass) implements LoadMass {

    private static final CompiledProcedure COMPILED = LoadMassProcedures.ON_NODE.compile();

    static OnNode of(Masses.Part part, NodalLoad load) {
      double[] values = COMPILED.run(load.force().z(), part.share(), SelfWeight.GRAVITY);
      return new OnNode(part, load, values[COMPILED.slot("m")]);
    }
  }
}
