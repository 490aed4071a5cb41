package spanledger.analysis;

import spanledger.frame.Freedom;
import spanledger.frame.Node;

/** The frame, or a part of it, can move without resistance. The message names where and how. */
public final class MechanismException extends IllegalArgumentException {

  private final transient Node node;
  private final Freedom freedom;

  MechanismException(Node node, Freedom freedom, String message) {
    super(message);
    this.node = node;
    this.freedom = freedom;
  }

  /** A node that moves most. */
  public Node node() {
    return node;
  }

  /** The way in which it moves most. */
  public Freedom freedom() {
    return freedom;
  }
}
