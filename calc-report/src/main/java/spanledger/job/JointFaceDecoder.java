package spanledger.job;

import java.util.List;
import java.util.Optional;
import spanledger.frame.Vector;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedText;
import spanledger.joint.BoltHead;
import spanledger.joint.BracketLeg;
import spanledger.joint.FaceBolts;
import spanledger.joint.FaceFriction;
import spanledger.joint.FaceKeys;
import spanledger.joint.FaceNormal;
import spanledger.joint.FacePlace;
import spanledger.joint.FaceWall;
import spanledger.joint.JointFace;
import spanledger.joint.Ply;
import spanledger.joint.SlotLips;
import spanledger.material.Alloy;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** Decodes the faces of a bracketed joint. */
final class JointFaceDecoder {

  private final Reading reading;
  private final Values values;
  private final JointParts parts;
  private final FaceBoltDecoder bolts;
  private final SlotLipDecoder lips;
  private final PlyDecoder plies;
  private final FaceWallDecoder walls;

  JointFaceDecoder(Reading reading, JointParts parts, FaceBoltDecoder bolts, SlotLipDecoder lips) {
    this.reading = reading;
    this.values = new Values(reading);
    this.parts = parts;
    this.bolts = bolts;
    this.lips = lips;
    this.plies = new PlyDecoder(reading, parts);
    this.walls = new FaceWallDecoder(reading, parts);
  }

  Optional<JointFace> decode(Located given) {
    return reading.fields("jointFace", given).flatMap(this::face);
  }

  private Optional<JointFace> face(Fields fields) {
    Optional<LocatedText> name = fields.requireText("name");
    Optional<FaceNormal> normal = fields.require("normal").flatMap(parts::normal);
    Optional<Vector> origin =
        fields
            .find("origin")
            .map(v -> values.vector(v, Dimension.LENGTH))
            .orElse(Optional.of(Vector.ZERO));
    Optional<Located> boltsGiven = fields.require("bolts");
    Optional<FaceBolts> group = boltsGiven.flatMap(bolts::decode);
    Optional<Located> keysGiven = fields.find("keys");
    Optional<FaceKeys> keys = keysGiven.flatMap(k -> keys(k, normal));
    Optional<Located> lipsGiven = fields.find("lips");
    List<Ply> found = plies.decode(fields.requireList("plies"), boltsGiven, group, lipsGiven);
    Optional<Located> legGiven = fields.find("leg");
    Optional<BracketLeg> leg = legGiven.flatMap(l -> leg(l, normal));
    Optional<SlotLips> held = lipsGiven.flatMap(l -> lips.decode(l, normal));
    Optional<Located> wallGiven = fields.find("wall");
    Optional<FaceWall> wall = wallGiven.flatMap(w -> walls.decode(w, normal, group));
    Optional<Located> frictionGiven = fields.find("friction");
    Optional<FaceFriction> friction = frictionGiven.flatMap(this::friction);
    Optional<Double> packing =
        fields
            .find("packing")
            .map(v -> values.notNegative(v, Dimension.LENGTH))
            .orElse(Optional.of(0.0));
    if (name.isEmpty()
        || normal.isEmpty()
        || origin.isEmpty()
        || group.isEmpty()
        || keysGiven.isPresent() != keys.isPresent()
        || found.isEmpty()
        || legGiven.isPresent() != leg.isPresent()
        || lipsGiven.isPresent() != held.isPresent()
        || wallGiven.isPresent() != wall.isPresent()
        || frictionGiven.isPresent() != friction.isPresent()
        || packing.isEmpty()
        || !headFits(fields, group.get(), lipsGiven, held)
        || !keysAreOn(found.get(0), keys, keysGiven)) {
      return Optional.empty();
    }
    return Optional.of(
        new JointFace(
            name.get().text(),
            normal.get(),
            origin.get(),
            group.get(),
            keys,
            found,
            leg,
            held,
            wall,
            friction,
            packing.get()));
  }

  /** Keys are teeth of the first ply, so that no arm of a key is a slip of the pen. */
  private boolean keysAreOn(Ply leg, Optional<FaceKeys> keys, Optional<Located> given) {
    boolean off =
        keys.stream()
            .flatMap(own -> own.places().stream())
            .anyMatch(
                at ->
                    at.a() < leg.from().a()
                        || at.a() > leg.to().a()
                        || at.b() < leg.from().b()
                        || at.b() > leg.to().b());
    if (off) {
      reading.error(
          given.orElseThrow(),
          "a key beside ply \"" + leg.name() + "\", of which it is a part",
          "the middle of every key within the rectangle of the first ply",
          "correct the \"places\" of the keys, or \"from\" and \"to\" of the ply");
    }
    return !off;
  }

  /** Heads in a slot need lips that they can bear on, and lips need heads in a slot. */
  private boolean headFits(
      Fields fields, FaceBolts group, Optional<Located> given, Optional<SlotLips> held) {
    if (group.head() instanceof BoltHead.InSlot head) {
      if (held.isEmpty()) {
        reading.error(
            fields.object(),
            "bolts with a " + head.words() + " but no \"lips\" that hold it",
            "\"lips\" beside bolts whose head lies in a slot",
            "add the lips, or make the head \"hexagon\"");
        return false;
      }
      if (head.width() <= held.get().opening()) {
        reading.error(
            given.orElseThrow(),
            "lips that open as wide as the head is, or wider",
            "an opening below the width of the head",
            "correct the sizes of lips or head");
        return false;
      }
      if (held.get().opening() < group.size().diameter()) {
        reading.error(
            given.orElseThrow(),
            "lips that open less wide than the bolts are thick",
            "an opening of at least the diameter of " + group.size().name(),
            "correct the opening or the size of the bolts");
        return false;
      }
      return true;
    }
    if (held.isPresent()) {
      reading.error(
          given.orElseThrow(),
          "lips beside hexagon heads",
          "lips only beside bolts whose head lies in a slot",
          "remove \"lips\", or give the head in the slot");
      return false;
    }
    return true;
  }

  private Optional<FaceKeys> keys(Located given, Optional<FaceNormal> normal) {
    return reading
        .fields("faceKeys", given)
        .flatMap(
            fields -> {
              List<FacePlace> places = parts.places(fields.requireList("places"));
              Optional<Boolean> along =
                  fields.require("bearsAlong").flatMap(v -> parts.isFirst(normal, v));
              Optional<Double> depth = size(fields, "depth");
              Optional<Double> length = size(fields, "length");
              Optional<Double> thickness = size(fields, "thickness");
              Optional<Double> clearance =
                  fields
                      .find("clearance")
                      .map(v -> values.notNegative(v, Dimension.LENGTH))
                      .orElse(Optional.of(0.0));
              Optional<Located> sideGiven = fields.find("sideDepth");
              Optional<Double> side = sideGiven.flatMap(v -> values.positive(v, Dimension.LENGTH));
              Optional<Alloy> alloy =
                  fields.require("material").flatMap(m -> parts.alloy(m, thickness));
              Optional<Alloy> slot =
                  fields.require("slotMaterial").flatMap(m -> parts.alloy(m, thickness));
              if (places.isEmpty()
                  || along.isEmpty()
                  || depth.isEmpty()
                  || length.isEmpty()
                  || thickness.isEmpty()
                  || clearance.isEmpty()
                  || sideGiven.isPresent() != side.isPresent()
                  || alloy.isEmpty()
                  || slot.isEmpty()) {
                return Optional.empty();
              }
              return Optional.of(
                  new FaceKeys(
                      places,
                      along.get(),
                      depth.get(),
                      length.get(),
                      thickness.get(),
                      clearance.get(),
                      side,
                      alloy.get(),
                      slot.get()));
            });
  }

  private Optional<BracketLeg> leg(Located given, Optional<FaceNormal> normal) {
    return reading
        .fields("bracketLeg", given)
        .flatMap(
            fields -> {
              Optional<Boolean> across =
                  fields.require("across").flatMap(v -> parts.isFirst(normal, v));
              Optional<Double> at =
                  fields.require("at").flatMap(v -> values.quantity(v, Dimension.LENGTH));
              Optional<Double> radius =
                  fields
                      .find("radius")
                      .map(v -> values.notNegative(v, Dimension.LENGTH))
                      .orElse(Optional.of(0.0));
              return across.isEmpty() || at.isEmpty() || radius.isEmpty()
                  ? Optional.empty()
                  : Optional.of(new BracketLeg(across.get(), at.get(), radius.get()));
            });
  }

  /** Friction with the test or declaration that it rests on. */
  Optional<FaceFriction> friction(Located given) {
    return reading
        .fields("faceFriction", given)
        .flatMap(
            fields -> {
              Optional<Located> where = fields.require("coefficient");
              Optional<Double> lower = where.flatMap(v -> values.positive(v, Dimension.NONE));
              Optional<LocatedText> source = fields.requireText("source");
              if (lower.isPresent() && lower.get() > 1) {
                reading.error(
                    where.orElseThrow(),
                    where.orElseThrow().words(),
                    "a coefficient of at most 1",
                    "correct the number");
                return Optional.empty();
              }
              return lower.flatMap(
                  mu -> source.map(s -> new FaceFriction(mu, Source.declared(s.text()))));
            });
  }

  private Optional<Double> size(Fields fields, String key) {
    return fields.require(key).flatMap(v -> values.positive(v, Dimension.LENGTH));
  }
}
