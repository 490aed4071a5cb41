package spanledger.memberdesign;

import spanledger.resistance.member.DeclaredResistance;
import spanledger.resistance.member.Hole;
import spanledger.resistance.member.MomentFactors;
import spanledger.resistance.member.Weld;

/** Something that the job says of some members beside their buckling lengths. */
public sealed interface Detail {

  /** The members. */
  MemberPick members();

  /** How bending moment and load act on lateral-torsional buckling. */
  record Moments(MemberPick members, MomentFactors factors) implements Detail {}

  /** A weld. */
  record Welded(MemberPick members, Weld weld) implements Detail {}

  /** A hole. */
  record Drilled(MemberPick members, Hole hole) implements Detail {}

  /** A resistance by test or table. */
  record Resists(MemberPick members, DeclaredResistance resistance) implements Detail {}
}
