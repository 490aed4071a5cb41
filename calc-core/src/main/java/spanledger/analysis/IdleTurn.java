package spanledger.analysis;

import spanledger.frame.Node;
import spanledger.frame.Vector;

/**
 * A turn of a node on which nothing acts: every member end there lets go of it, and no support
 * holds it. It has no influence on any result and is left at zero.
 *
 * @param node the node
 * @param axis the axis of the turn, global, of length 1
 */
public record IdleTurn(Node node, Vector axis) {}
