package spanledger.envelope;

/**
 * How well the solution meets equilibrium.
 *
 * @param cases the number of load cases solved
 * @param worstResidual the greatest out-of-balance force or moment at any node, per size of the
 *     case's loads
 * @param freedoms the number of unknown movements of the frame
 */
public record Proof(int cases, double worstResidual, int freedoms) {}
