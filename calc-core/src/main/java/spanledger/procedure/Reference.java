package spanledger.procedure;

import spanledger.quantity.Dimension;

/**
 * A use of an input or of an earlier step, by its symbol.
 *
 * @param symbol the symbol, unique in its procedure, for example {@code M_Rd}
 * @param dimension the dimension of the value
 */
public record Reference(String symbol, Dimension dimension) implements Expression {}
