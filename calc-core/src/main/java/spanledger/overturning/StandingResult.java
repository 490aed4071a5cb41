package spanledger.overturning;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import spanledger.frame.Node;
import spanledger.frame.Vector;

/**
 * How a structure stands as a whole.
 *
 * @param standing how its author describes it
 * @param feet the nodes that the ground holds up
 * @param corners of the base plates that the job describes
 * @param edges the lines about which it may tip, counter-clockwise seen from above
 * @param permanent its permanent loads
 * @param tipping every line under every rule whose leading action there is
 * @param sliding every rule whose leading action there is
 */
public record StandingResult(
    Standing standing,
    List<Node> feet,
    List<PlateCorner> corners,
    List<TippingEdge> edges,
    PermanentLoads permanent,
    List<TippingCase> tipping,
    List<SlidingCase> sliding) {

  public StandingResult {
    feet = List.copyOf(feet);
    corners = List.copyOf(corners);
    edges = List.copyOf(edges);
    tipping = List.copyOf(tipping);
    sliding = List.copyOf(sliding);
  }

  /** The corner of a base plate that a line goes through; empty if that is a foot itself. */
  public Optional<PlateCorner> corner(Node place) {
    return corners.stream().filter(one -> one.corner().equals(place)).findFirst();
  }

  /** The worst rule of a line. */
  public Optional<TippingCase> worst(TippingEdge edge) {
    return tipping.stream()
        .filter(one -> one.edge() == edge)
        .max(Comparator.comparingDouble(TippingCase::use));
  }

  /** The worst rule for sliding. */
  public Optional<SlidingCase> worstSliding() {
    return sliding.stream().max(Comparator.comparingDouble(SlidingCase::friction));
  }

  /** The least factor against tipping; infinite if nothing can tip it. */
  public double leastFactor() {
    return tipping.stream().mapToDouble(TippingCase::factor).min().orElse(Double.POSITIVE_INFINITY);
  }

  /** Where ballast would be put: at the places that the job names, else evenly on the feet. */
  public List<Vector> ballastPlaces() {
    return standing.ballast().isEmpty()
        ? feet.stream().map(Node::place).toList()
        : standing.ballast().stream().map(Standing.Ballast::place).toList();
  }

  /** The names of {@link #ballastPlaces}. */
  public List<String> ballastPlaceNames() {
    return standing.ballast().isEmpty()
        ? feet.stream().map(Node::name).toList()
        : standing.ballast().stream().map(Standing.Ballast::name).toList();
  }

  /** The mass to add against tipping about a line, kg; -1 if none at these places helps. */
  public double ballast(TippingEdge edge) {
    return most(
        tipping.stream()
            .filter(one -> one.edge() == edge)
            .mapToDouble(one -> one.ballast(ballastPlaces()))
            .toArray());
  }

  /** The mass to add against sliding, kg; -1 if none helps; empty if the friction is not known. */
  public Optional<Double> ballastAgainstSliding() {
    return standing
        .friction()
        .map(
            friction ->
                most(
                    sliding.stream()
                        .mapToDouble(one -> one.ballast(friction.coefficient()))
                        .toArray()));
  }

  /** The mass to add against tipping and sliding, kg; -1 if none at these places helps. */
  public double ballast() {
    double[] needs = new double[edges.size() + 1];
    for (int i = 0; i < edges.size(); i++) {
      needs[i] = ballast(edges.get(i));
    }
    needs[edges.size()] = ballastAgainstSliding().orElse(0.0);
    return most(needs);
  }

  private static double most(double[] needs) {
    double most = 0;
    for (double need : needs) {
      if (need < 0) {
        return -1;
      }
      most = Math.max(most, need);
    }
    return most;
  }
}
