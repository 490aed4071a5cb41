package spanledger.resistance.en1999;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import spanledger.material.HeatAffectedStrengths;
import spanledger.resistance.member.Figured;
import spanledger.resistance.member.MemberCase;
import spanledger.resistance.member.MemberSection;
import spanledger.resistance.member.NotCheckable;
import spanledger.resistance.member.Weld;
import spanledger.section.outline.Point;
import spanledger.section.plate.Plate;

/** How far and how much welds soften the metal beside them. */
final class Softening {

  /** Walls up to this keep the strengths of the table also when TIG-welded, mm. */
  private static final double THIN = 5;

  /** Thicker walls that are TIG-welded have no reach to be recalled, mm. */
  private static final double TIG_LIMIT = 6;

  private final Inputs inputs;
  private final MemberCase member;

  Softening(Inputs inputs, MemberCase member) {
    this.inputs = inputs;
    this.member = member;
  }

  /** A strip of a wall beside a weld along the member. */
  record Strip(String label, Plate wall, Point start, Point end, double width, Figured soft) {}

  /** What keeps the welds from being judged. */
  List<NotCheckable.Lack> lacks() {
    List<NotCheckable.Lack> lacks = new ArrayList<>();
    if (!member.welds().isEmpty() && member.alloy().heatAffected().isEmpty()) {
      lacks.add(
          new NotCheckable.Lack(
              "member "
                  + member.name()
                  + " is welded, and alloy "
                  + member.alloy().designation()
                  + " has no strengths beside welds",
              "give weldProof and weldUltimate for the alloy"));
    }
    for (Weld weld : member.welds()) {
      if (weld instanceof Weld.WithoutPlace) {
        lacks.add(
            new NotCheckable.Lack(
                "weld " + weld.name() + " of member " + member.name() + " has no place",
                "give its place along the member, or the wall it runs along"));
      } else if (weld instanceof Weld.Along along
          && member.section().wall(along.plate()).isEmpty()) {
        lacks.add(unknownWall(member.section(), "weld " + weld.name(), along.plate()));
      } else if (reach(weld).isEmpty()) {
        lacks.add(
            new NotCheckable.Lack(
                "how far TIG weld " + weld.name() + " softens walls over 6 mm is not known",
                "give its reach"));
      }
    }
    return lacks;
  }

  static NotCheckable.Lack unknownWall(MemberSection section, String what, String wall) {
    return new NotCheckable.Lack(
        what + " names wall " + wall + ", which section " + section.name() + " does not have",
        "name one of " + String.join(", ", section.walls().stream().map(Plate::name).toList()));
  }

  boolean along() {
    return member.welds().stream().anyMatch(Weld.Along.class::isInstance);
  }

  /** The strips beside all welds along the member. */
  List<Strip> strips() {
    List<Strip> strips = new ArrayList<>();
    for (Weld weld : member.welds()) {
      if (weld instanceof Weld.Along along) {
        Plate wall = member.section().wall(along.plate()).orElseThrow();
        double reach = reach(weld).orElseThrow().value();
        double length = wall.start().distance(wall.end());
        double from = Math.max(0, along.fromStart() - reach) / length;
        double to = Math.min(length, along.fromStart() + reach) / length;
        if (to > from) {
          strips.add(
              new Strip(
                  weld.name(),
                  wall,
                  wall.start().towards(wall.end(), from),
                  wall.start().towards(wall.end(), to),
                  (to - from) * length,
                  soft(wall.thickness(), along.method())));
        }
      }
    }
    return strips;
  }

  private HeatAffectedStrengths beside() {
    return member.alloy().heatAffected().orElseThrow();
  }

  /** ρ_o,haz for walls of a thickness. */
  private Figured soft(double thickness, Weld.Method method) {
    double ratio = beside().proofStrength() / member.alloy().proofStrength();
    return new Figured(
        Math.min(1, ratio * tig(thickness, method)),
        "alloy " + member.alloy().designation() + ", ρ_o,haz",
        beside().source());
  }

  /** f_u,haz beside a weld across the member. */
  Figured ultimate(Weld.Across weld) {
    double thickness =
        member.section().walls().stream().mapToDouble(Plate::thickness).max().orElse(0);
    return new Figured(
        beside().ultimateStrength() * tig(thickness, weld.method()),
        "alloy " + member.alloy().designation() + ", f_u,haz",
        beside().source());
  }

  private double tig(double thickness, Weld.Method method) {
    return method == Weld.Method.TIG && thickness > THIN
        ? inputs.figures().figure(Figures.TIG_FACTOR).value()
        : 1;
  }

  /** b_haz, if it is known. */
  Optional<Figured> reach(Weld weld) {
    if (weld instanceof Weld.Across across) {
      double thickest =
          member.section().walls().stream().mapToDouble(Plate::thickness).max().orElse(TIG_LIMIT);
      return reach(weld, across.reach(), across.method(), thickest);
    }
    if (weld instanceof Weld.Along along) {
      return reach(
          weld,
          along.reach(),
          along.method(),
          member.section().wall(along.plate()).map(Plate::thickness).orElse(TIG_LIMIT));
    }
    return Optional.empty();
  }

  private Optional<Figured> reach(
      Weld weld, OptionalDouble given, Weld.Method method, double thickness) {
    if (given.isPresent()) {
      return Optional.of(
          new Figured(given.getAsDouble(), "weld " + weld.name() + ", reach", Inputs.CASE));
    }
    if (method == Weld.Method.TIG) {
      return thickness > TIG_LIMIT
          ? Optional.empty()
          : Optional.of(inputs.figures().figured("haz.tig.reach-6"));
    }
    String step = thickness <= 6 ? "6" : thickness <= 12 ? "12" : thickness <= 25 ? "25" : "beyond";
    return Optional.of(inputs.figures().figured("haz.mig.reach-" + step));
  }
}
