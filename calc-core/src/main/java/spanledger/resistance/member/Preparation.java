package spanledger.resistance.member;

/** What a code makes of a member: ready to be checked, or not checkable and why. */
public sealed interface Preparation permits PreparedMember, NotCheckable {}
