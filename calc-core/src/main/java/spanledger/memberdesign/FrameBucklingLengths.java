package spanledger.memberdesign;

import java.util.Optional;
import spanledger.frame.Member;
import spanledger.resistance.member.BucklingLength;
import spanledger.resistance.member.BucklingMode;

/** Buckling lengths from the elastic critical load of the frame. */
@FunctionalInterface
public interface FrameBucklingLengths {

  /** Nothing is known. */
  FrameBucklingLengths NONE = (member, mode) -> Optional.empty();

  /** The length of a member in a mode; empty if the critical modes tell nothing of it. */
  Optional<BucklingLength> of(Member member, BucklingMode mode);
}
