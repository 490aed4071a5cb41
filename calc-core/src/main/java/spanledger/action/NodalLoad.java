package spanledger.action;

import spanledger.frame.Node;
import spanledger.frame.Vector;

/**
 * A load on a node, in global axes.
 *
 * @param node the loaded node
 * @param force N
 * @param moment N·mm, positive by the right-hand rule
 * @param what where it comes from
 */
public record NodalLoad(Node node, Vector force, Vector moment, String what) {}
