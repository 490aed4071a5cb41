package spanledger.envelope;

import spanledger.analysis.SegmentEffect;

/**
 * The greatest or the least of an internal force, and what causes it.
 *
 * @param effect which internal force
 * @param greatest whether it is the greatest (else the least), signs counted
 * @param governing the combination with its pattern and the place of its moving load, the cut, and
 *     the force there, N or N·mm, with the signs of {@code SectionForces}
 */
public record ForceExtreme(SegmentEffect effect, boolean greatest, Governing governing) {}
