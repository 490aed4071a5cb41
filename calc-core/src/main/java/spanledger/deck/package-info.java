/**
 * Deck panels, gratings, planks and treads between the members that carry them: capacity tables of
 * tested panels, and planks by their section.
 */
@NullMarked
package spanledger.deck;

import org.jspecify.annotations.NullMarked;
