package spanledger.resistance.joint;

import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;

/** What a code adds to a leg at a bolt. */
record TStubInput(Working strengths, Feed hardened, Feed elasticPart, JointCheck boltTension) {}
