/**
 * Resistances of bolts, plates, slot lips, keys and bracket legs, each a calculation procedure.
 *
 * <p>{@link spanledger.resistance.joint.JointCode} is the way in: one implementation per standard.
 * What standards write differently (bolts, bearing, tearing, slip) is theirs; what follows from
 * mechanics (lips, keys, heads, legs) is written once, over the design strengths of {@link
 * spanledger.resistance.joint.JointCode#strengths}.
 *
 * <p>Every check is given its demand as a {@link spanledger.resistance.member.Feed}, so that a
 * workbook can refer to the cell that holds the force.
 */
@NullMarked
package spanledger.resistance.joint;

import org.jspecify.annotations.NullMarked;
