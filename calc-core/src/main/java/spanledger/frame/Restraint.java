package spanledger.frame;

/** What holds one freedom: of a node at its support, or of a member end against its node. */
public sealed interface Restraint {

  /** Held completely. */
  record Fixed() implements Restraint {
    @Override
    public boolean isLinear() {
      return true;
    }

    @Override
    public Restraint engaged() {
      return this;
    }
  }

  /** Not held at all. */
  record Free() implements Restraint {
    @Override
    public boolean isLinear() {
      return true;
    }

    @Override
    public Restraint engaged() {
      return this;
    }
  }

  /**
   * Held by a linear spring.
   *
   * @param stiffness greater than zero; N/mm for shifts, N·mm/rad for turns
   */
  record Spring(double stiffness) implements Restraint {
    public Spring {
      if (!(stiffness > 0) || Double.isInfinite(stiffness)) {
        throw new IllegalArgumentException(
            "A spring stiffness must be greater than zero, found " + stiffness + ".");
      }
    }

    @Override
    public boolean isLinear() {
      return true;
    }

    @Override
    public Restraint engaged() {
      return this;
    }
  }

  /**
   * Held by a spring with free play: nothing resists up to the play, either way; then a stiffness,
   * and beyond a given movement a second one.
   *
   * @param freePlay movement each way before anything resists, mm or rad; 0 or more
   * @param stiffness of what resists then; greater than zero, infinite for a hard stop; N/mm or
   *     N·mm/rad
   * @param secondFrom movement from which the second stiffness takes over, mm or rad; at least the
   *     play, infinite if there is none
   * @param secondStiffness the second stiffness; greater than zero
   */
  record Play(double freePlay, double stiffness, double secondFrom, double secondStiffness)
      implements Restraint {
    public Play {
      if (!(freePlay >= 0) || Double.isInfinite(freePlay)) {
        throw new IllegalArgumentException(
            "Free play must be zero or more, found " + freePlay + ".");
      }
      if (!(stiffness > 0) || !(secondStiffness > 0)) {
        throw new IllegalArgumentException(
            "Stiffnesses after free play must be greater than zero, found "
                + stiffness
                + " and "
                + secondStiffness
                + ".");
      }
      if (!(secondFrom >= freePlay)) {
        throw new IllegalArgumentException(
            "The second stiffness must begin beyond the free play of "
                + freePlay
                + ", found "
                + secondFrom
                + ".");
      }
    }

    /** With one stiffness after the play. */
    public Play(double freePlay, double stiffness) {
      this(freePlay, stiffness, Double.POSITIVE_INFINITY, stiffness);
    }

    @Override
    public boolean isLinear() {
      return false;
    }

    @Override
    public Restraint engaged() {
      return holding(stiffness);
    }
  }

  /**
   * Held one way only, once a gap has closed: a foot that lifts, a tie that slackens, a stop.
   *
   * @param against the movement that it resists
   * @param gap movement that way before it resists, mm or rad; negative if it is wedged in
   * @param stiffness once it resists; greater than zero, infinite if rigid; N/mm or N·mm/rad
   */
  record OneWay(Way against, double gap, double stiffness) implements Restraint {
    public OneWay {
      if (!Double.isFinite(gap)) {
        throw new IllegalArgumentException("A gap must be a finite number, found " + gap + ".");
      }
      if (!(stiffness > 0)) {
        throw new IllegalArgumentException(
            "A one-way stiffness must be greater than zero, found " + stiffness + ".");
      }
    }

    @Override
    public boolean isLinear() {
      return false;
    }

    @Override
    public Restraint engaged() {
      return holding(stiffness);
    }
  }

  /** A sense of movement along or about an axis. */
  enum Way {
    /** Towards the positive side; of a member end: stretching. */
    POSITIVE(1),
    /** Towards the negative side: of a support along Z, down; of a member end, shortening. */
    NEGATIVE(-1);

    private final int sign;

    Way(int sign) {
      this.sign = sign;
    }

    /** 1 or -1. */
    public int sign() {
      return sign;
    }
  }

  /** Whether the force grows in proportion to the movement, or there is none. */
  boolean isLinear();

  /**
   * The same as it acts once all play is taken up and all gaps are closed; what a linear analysis
   * takes it for.
   */
  Restraint engaged();

  private static Restraint holding(double stiffness) {
    return Double.isInfinite(stiffness) ? FIXED : new Spring(stiffness);
  }

  /** Bears a support only while it presses down: a foot that may lift. */
  Restraint FOOT = new OneWay(Way.NEGATIVE, 0, Double.POSITIVE_INFINITY);

  /** Of a member end along its axis: it can pull, not push. */
  Restraint PULLS_ONLY = new OneWay(Way.POSITIVE, 0, Double.POSITIVE_INFINITY);

  /** Of a member end along its axis: it can push, not pull. */
  Restraint PUSHES_ONLY = new OneWay(Way.NEGATIVE, 0, Double.POSITIVE_INFINITY);

  /** Held completely. */
  Restraint FIXED = new Fixed();

  /** Not held. */
  Restraint FREE = new Free();
}
