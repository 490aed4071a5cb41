package spanledger.job;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedNumber;
import spanledger.job.source.Located.LocatedObject;
import spanledger.job.source.Located.LocatedText;
import spanledger.job.source.Quoted;
import spanledger.joint.FaceBolts;
import spanledger.joint.FacePlace;
import spanledger.joint.Ply;
import spanledger.joint.PlySide;
import spanledger.material.Alloy;
import spanledger.quantity.Dimension;

/** Decodes the plies of a joint face. */
final class PlyDecoder {

  private static final String BELONGS_TO = "belongsTo";

  private final Reading reading;
  private final Values values;
  private final JointParts parts;

  PlyDecoder(Reading reading, JointParts parts) {
    this.reading = reading;
    this.values = new Values(reading);
    this.parts = parts;
  }

  /**
   * All plies; empty if one of them has a fault or they do not fit each other.
   *
   * @param boltsGiven the bolts as they stand in the job
   * @param group the bolts, if they have no fault
   * @param lips the lips beside the plies, as they stand in the job
   */
  List<Ply> decode(
      List<Located> given,
      Optional<Located> boltsGiven,
      Optional<FaceBolts> group,
      Optional<Located> lips) {
    List<Ply> plies = new ArrayList<>();
    Set<String> names = new HashSet<>();
    boolean sound = true;
    for (Located one : given) {
      Optional<Ply> ply = reading.fields("ply", one).flatMap(fields -> ply(fields, group, names));
      ply.ifPresent(plies::add);
      sound &= ply.isPresent();
    }
    return sound && !plies.isEmpty() && sidesFit(given, plies, boltsGiven, lips)
        ? plies
        : List.of();
  }

  private Optional<Ply> ply(Fields fields, Optional<FaceBolts> group, Set<String> names) {
    Optional<LocatedText> name = fields.requireText("name");
    Optional<Double> thickness =
        fields.require("thickness").flatMap(v -> values.positive(v, Dimension.LENGTH));
    Optional<Alloy> alloy = fields.require("material").flatMap(m -> parts.alloy(m, thickness));
    Optional<Located> holeGiven = fields.require("hole");
    Optional<Double> hole = holeGiven.flatMap(v -> values.positive(v, Dimension.LENGTH));
    Optional<Located> fromGiven = fields.require("from");
    Optional<FacePlace> from = fromGiven.flatMap(parts::place);
    Optional<FacePlace> to = fields.require("to").flatMap(parts::place);
    Optional<Located> sideGiven = fields.find(BELONGS_TO);
    Optional<PlySide> side = sideGiven.flatMap(this::side);
    if (name.isPresent() && !names.add(name.get().text())) {
      reading.error(
          name.get(),
          Quoted.text(name.get().text()) + " a second time in this face",
          "each ply with a name of its own",
          "choose another name");
      return Optional.empty();
    }
    if (name.isEmpty()
        || thickness.isEmpty()
        || alloy.isEmpty()
        || hole.isEmpty()
        || from.isEmpty()
        || to.isEmpty()
        || sideGiven.isPresent() != side.isPresent()) {
      return Optional.empty();
    }
    if (!(to.get().a() > from.get().a()) || !(to.get().b() > from.get().b())) {
      reading.error(
          fromGiven.orElseThrow(),
          "a corner that is not below the other along both axes",
          "\"from\" with the lesser coordinates, \"to\" with the greater",
          "exchange the coordinates");
      return Optional.empty();
    }
    Ply ply =
        new Ply(
            name.get().text(),
            thickness.get(),
            alloy.get(),
            hole.get(),
            from.get(),
            to.get(),
            side);
    return group.isEmpty() || holds(ply, group.get(), holeGiven.orElseThrow(), fields)
        ? Optional.of(ply)
        : Optional.empty();
  }

  /** The part; the schema reports any other word. */
  private Optional<PlySide> side(Located given) {
    Optional<PlySide> side =
        given instanceof LocatedText text
            ? Arrays.stream(PlySide.values())
                .filter(own -> own.word().equals(text.text()))
                .findFirst()
            : Optional.empty();
    if (side.isEmpty()) {
      reading.gap(given.pointer());
    }
    return side;
  }

  /** Whether the holes lie in the ply and the bolts in the holes; reports it if not. */
  private boolean holds(Ply ply, FaceBolts group, Located hole, Fields fields) {
    if (ply.hole() < group.size().diameter()) {
      reading.error(
          hole,
          hole.words() + ", less than the bolts' diameter",
          "at least the diameter of " + group.size().name(),
          "correct the hole or the bolts");
      return false;
    }
    double half = ply.hole() / 2;
    for (FacePlace place : group.places()) {
      boolean inside =
          place.a() - half > ply.from().a()
              && place.a() + half < ply.to().a()
              && place.b() - half > ply.from().b()
              && place.b() + half < ply.to().b();
      if (!inside) {
        reading.error(
            fields.object(),
            "a ply that does not hold the hole of every bolt",
            "a rectangle with metal around every hole",
            "correct \"from\" and \"to\", or the places of the bolts");
        return false;
      }
    }
    return true;
  }

  /** Whether plies that say to which part they belong make a joint; reports it if not. */
  private boolean sidesFit(
      List<Located> given, List<Ply> plies, Optional<Located> bolts, Optional<Located> lips) {
    int planes = 0;
    int without = 0;
    for (int i = 0; i < plies.size(); i++) {
      without += plies.get(i).side().isEmpty() ? 1 : 0;
      planes += i > 0 && !plies.get(i).side().equals(plies.get(i - 1).side()) ? 1 : 0;
    }
    if (without == plies.size()) {
      return true;
    }
    if (without > 0) {
      int first = 0;
      while (plies.get(first).side().isPresent()) {
        first++;
      }
      reading.error(
          given.get(first),
          "a ply that does not say to which part it belongs, beside plies that do",
          "\"belongsTo\" in every ply of a face, or in none",
          "add \"belongsTo\"");
      return false;
    }
    if (lips.isPresent()) {
      reading.error(
          lips.get(),
          "lips beside plies that say to which part they belong",
          "\"belongsTo\" only where bolts go through plies of both parts",
          "remove \"belongsTo\": with heads in a slot all plies belong to the bracket");
      return false;
    }
    if (planes == 0) {
      reading.error(
          given.get(0),
          "plies that all belong to the " + plies.get(0).side().orElseThrow().word(),
          "plies of the member and of what holds it",
          "correct \"belongsTo\", or add the plies of the other part");
      return false;
    }
    return planesFit(planes, bolts);
  }

  private boolean planesFit(int planes, Optional<Located> bolts) {
    Optional<Located> declared =
        bolts.flatMap(
            own ->
                own instanceof LocatedObject object
                    ? object.find("shearPlanes").map(Located.Entry::value)
                    : Optional.empty());
    if (declared.isPresent()
        && declared.get() instanceof LocatedNumber number
        && number.value() != planes
        && number.value() <= FaceBolts.MOST_PLANES) {
      reading.error(
          declared.get(),
          number.words() + " shear planes, but plies of both parts meet in " + planes,
          "as many as the plies make",
          "remove \"shearPlanes\", or correct \"belongsTo\" or the order of the plies");
      return false;
    }
    return true;
  }
}
