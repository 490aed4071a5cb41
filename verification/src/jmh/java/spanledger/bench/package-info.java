/** Benchmarks; {@code mvn -Pbench} runs them. */
@NullMarked
package spanledger.bench;

import org.jspecify.annotations.NullMarked;
