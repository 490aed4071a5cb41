package spanledger.procedure;

import spanledger.provenance.Source;

/**
 * One line of a calculation.
 *
 * @param symbol its symbol and dimension
 * @param words what it means
 * @param expression the formula, over inputs and earlier steps
 * @param source the clause or work the formula comes from
 */
public record Step(Reference symbol, String words, Expression expression, Source source) {}
