/**
 * How the structure behaves under what governs it: critical load factors, states with one-way
 * parts, slip and second order, natural frequencies.
 */
@NullMarked
package spanledger.behaviour;

import org.jspecify.annotations.NullMarked;
