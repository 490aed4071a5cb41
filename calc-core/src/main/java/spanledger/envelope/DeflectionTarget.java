package spanledger.envelope;

import java.util.Optional;
import spanledger.frame.Member;
import spanledger.frame.Vector;

/** A deflection looked for on one member, and the worst found so far. */
final class DeflectionTarget {

  private final Member member;
  private final DeflectionFinding.Kind kind;
  private final Vector direction;
  private Optional<Governing> worst = Optional.empty();

  DeflectionTarget(Member member, DeflectionFinding.Kind kind, Vector direction) {
    this.member = member;
    this.kind = kind;
    this.direction = direction;
  }

  Member member() {
    return member;
  }

  DeflectionFinding.Kind kind() {
    return kind;
  }

  Vector direction() {
    return direction;
  }

  double worst() {
    return worst.map(Governing::value).orElse(-1.0);
  }

  /** Takes the place if its deflection, mm without sign, is greater than the worst so far. */
  void offer(double deflection, Instance instance, Station station) {
    if (deflection > worst()) {
      worst = Optional.of(new Governing(instance, station, deflection));
    }
  }

  Optional<Governing> found() {
    return worst;
  }
}
