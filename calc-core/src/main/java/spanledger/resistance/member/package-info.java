/**
 * What every member code has in common: the case of a member, the effects at a cut, calculations
 * that feed one another, and their fast evaluation.
 *
 * <p>A {@link spanledger.resistance.member.MemberCode} turns a {@link
 * spanledger.resistance.member.MemberCase} into a {@link
 * spanledger.resistance.member.PreparedMember}: {@link spanledger.resistance.member.Working}s that
 * do not depend on loads (classes, effective sections, resistances), and {@link
 * spanledger.resistance.member.CutCheck}s that do. The first are rows of procedure tables whose
 * inputs are cells of earlier rows; the second are evaluated for every cut by {@link
 * spanledger.resistance.member.MemberEvaluator}, and become rows, too, for the cuts that govern.
 */
@NullMarked
package spanledger.resistance.member;

import org.jspecify.annotations.NullMarked;
