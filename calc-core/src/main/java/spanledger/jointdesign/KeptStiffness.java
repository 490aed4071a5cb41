package spanledger.jointdesign;

import spanledger.provenance.Source;

/**
 * Why the stiffness that the analysis takes of a member end stands, though the parts of its joint
 * give another: the word of whoever answers for the job, which is shown and not judged.
 *
 * @param reason why
 * @param source where it is said
 */
public record KeptStiffness(String reason, Source source) {}
