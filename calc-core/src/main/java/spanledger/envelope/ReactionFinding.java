package spanledger.envelope;

import spanledger.action.LimitState;
import spanledger.frame.Freedom;
import spanledger.frame.Support;

/**
 * An extreme reaction of a support.
 *
 * @param support the support
 * @param freedom the direction of the reaction, global
 * @param greatest whether it is the greatest (else the least)
 * @param limitState the combinations that were searched
 * @param instance the combination, with the place of its moving load
 * @param value the reaction, N or N·mm, as the support acts on the structure
 */
public record ReactionFinding(
    Support support,
    Freedom freedom,
    boolean greatest,
    LimitState limitState,
    Instance instance,
    double value) {}
