package spanledger.procedure;

/**
 * A quantity that a procedure is given.
 *
 * @param symbol its symbol and dimension
 * @param words what it means
 * @param domain the values it may take
 */
public record Input(Reference symbol, String words, Domain domain) {}
