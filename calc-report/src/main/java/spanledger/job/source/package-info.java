/** Job files as text: loading, and JSON whose every value knows its place. */
@NullMarked
package spanledger.job.source;

import org.jspecify.annotations.NullMarked;
