package spanledger.joint;

import spanledger.provenance.Source;

/**
 * A joint known by tests of one of its turns.
 *
 * @param name tells it from all others of the job
 * @param source the tests
 */
public record TestedTurn(String name, Source source) implements JointType {}
