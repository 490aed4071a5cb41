package spanledger.action;

/** Why a load has its size; it decides which formula the workbook shows for it. */
public sealed interface LoadOrigin {

  /** The segment's own weight: area times density times {@link SelfWeight#GRAVITY}. */
  record OwnWeight() implements LoadOrigin {}

  /**
   * A share of a surface's area load.
   *
   * @param surface the surface's name
   * @param pressure MPa (N/mm²)
   * @param strip the strip of floor carried by the member
   */
  record AreaShare(String surface, double pressure, DeckStrip strip) implements LoadOrigin {}

  /**
   * A figure of the rule set or of the job, taken as it is.
   *
   * @param what the name of the figure
   */
  record Given(String what) implements LoadOrigin {}

  /**
   * A force of the rule set or of the job, spread evenly over a length of a load path.
   *
   * @param what the name of the figure
   * @param length mm
   */
  record Patch(String what, double length) implements LoadOrigin {}

  /**
   * A load per length between a node and a member end that stands back from it; it stands on that
   * end.
   *
   * @param perLength why the load per length has its size
   * @param length what it acts along, mm
   */
  record BeyondEnd(LoadOrigin perLength, double length) implements LoadOrigin {}

  /** Whether it is a floor's area load. */
  default boolean isAreaLoad() {
    return this instanceof AreaShare
        || (this instanceof BeyondEnd beyond && beyond.perLength().isAreaLoad());
  }

  /**
   * A level force that stands for a frame out of plumb: a fraction of a vertical load.
   *
   * @param fraction level force per vertical force
   * @param vertical why the vertical load has its size
   */
  record Notional(double fraction, LoadOrigin vertical) implements LoadOrigin {}
}
