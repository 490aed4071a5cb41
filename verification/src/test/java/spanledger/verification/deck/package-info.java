/** Decks and treads against values worked out by other means. */
@NullMarked
package spanledger.verification.deck;

import org.jspecify.annotations.NullMarked;
