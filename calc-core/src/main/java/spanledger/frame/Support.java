package spanledger.frame;

import java.util.List;

/**
 * What holds a node to the ground.
 *
 * @param node the node held
 * @param restraints one per {@link Freedom}, in its order, global axes
 */
public record Support(Node node, List<Restraint> restraints) {
  public Support {
    restraints = List.copyOf(restraints);
    if (restraints.size() != Freedom.values().length) {
      throw new IllegalArgumentException(
          "A support has six restraints, found " + restraints.size());
    }
  }

  /** The restraint of one freedom. */
  public Restraint restraint(Freedom freedom) {
    return restraints.get(freedom.ordinal());
  }
}
