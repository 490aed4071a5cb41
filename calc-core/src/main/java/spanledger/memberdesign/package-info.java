/**
 * Member checks of a frame by a member code: what the job says of buckling lengths, restraints,
 * welds and holes becomes one case per member; the cuts of the governing states are judged by it.
 */
@NullMarked
package spanledger.memberdesign;

import org.jspecify.annotations.NullMarked;
