package spanledger.job;

import java.util.Optional;
import spanledger.memberdesign.MemberPick;
import spanledger.overturning.Standing;

/**
 * What a job says of the structure as a whole.
 *
 * @param standing how it stands
 * @param leftOut the members that are left out one by one; all braces if the job does not say
 */
public record StandingBlock(Standing standing, Optional<MemberPick> leftOut) {}
