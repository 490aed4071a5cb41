package spanledger.frame;

import java.util.List;

/**
 * What holds a node to the ground.
 *
 * @param node the node held
 * @param restraints one per {@link Freedom}, in its order, global axes
 * @param freeWhenLifted whether the other restraints let go while a one-way restraint of this
 *     support is open: a foot in the air holds nothing
 */
public record Support(Node node, List<Restraint> restraints, boolean freeWhenLifted) {
  public Support {
    restraints = List.copyOf(restraints);
    if (restraints.size() != Freedom.values().length) {
      throw new IllegalArgumentException(
          "A support has six restraints, found " + restraints.size());
    }
  }

  /** One whose restraints act each on its own. */
  public Support(Node node, List<Restraint> restraints) {
    this(node, restraints, false);
  }

  /** The restraint of one freedom. */
  public Restraint restraint(Freedom freedom) {
    return restraints.get(freedom.ordinal());
  }
}
