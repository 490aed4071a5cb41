package spanledger.stability;

/**
 * The factor on all axial forces of a state at which the frame buckles elastically.
 *
 * @param factor α_cr, at most 1e-5 of it too low; infinite if nothing buckles below {@link
 *     #searchedTo}
 * @param stableAt the greatest factor at which the frame was proved stable, by the count of
 *     negative eigenvalues (Sturm sequence) with the count of segments buckled between their nodes
 * @param searchedTo up to where it was searched
 * @param mode how it buckles; without movement if nothing does
 * @param factorisations how many times the stiffness was factored
 */
public record CriticalFactor(
    double factor, double stableAt, double searchedTo, ModeShape mode, int factorisations) {

  /** Whether the frame buckles below the limit of the search. */
  public boolean buckles() {
    return factor < Double.POSITIVE_INFINITY;
  }
}
