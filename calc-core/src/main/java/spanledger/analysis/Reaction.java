package spanledger.analysis;

import spanledger.frame.Node;
import spanledger.frame.Vector;

/**
 * What a support does to its node.
 *
 * @param node the supported node
 * @param force N, global axes
 * @param moment N·mm, global axes
 */
public record Reaction(Node node, Vector force, Vector moment) {}
