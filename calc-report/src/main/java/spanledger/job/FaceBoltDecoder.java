package spanledger.job;

import java.util.List;
import java.util.Optional;
import spanledger.bolt.BoltGrade;
import spanledger.bolt.BoltSize;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedNumber;
import spanledger.job.source.Located.LocatedText;
import spanledger.job.source.Located.LocatedTruth;
import spanledger.joint.BoltHead;
import spanledger.joint.FaceBolts;
import spanledger.joint.FacePlace;
import spanledger.joint.Tightening;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** Decodes the bolts of a joint face and how far they are tightened. */
final class FaceBoltDecoder {

  private final Reading reading;
  private final Values values;
  private final JointParts parts;

  FaceBoltDecoder(Reading reading, JointParts parts) {
    this.reading = reading;
    this.values = new Values(reading);
    this.parts = parts;
  }

  Optional<FaceBolts> decode(Located given) {
    return reading.fields("faceBolts", given).flatMap(this::bolts);
  }

  private Optional<FaceBolts> bolts(Fields fields) {
    Optional<BoltSize> size = fields.require("size").flatMap(parts::size);
    Optional<BoltGrade> grade = fields.require("grade").flatMap(g -> parts.grade(g, size));
    Optional<BoltHead> head = fields.require("head").flatMap(this::head);
    List<FacePlace> places = parts.places(fields.requireList("places"));
    Optional<Integer> planes = fields.find("shearPlanes").map(this::planes).orElse(Optional.of(1));
    Optional<Boolean> thread =
        fields.find("threadInShear").map(this::truth).orElse(Optional.of(true));
    Optional<Located> tightened = fields.find("tightening");
    Optional<Tightening> tightening = tightened.flatMap(this::tightening);
    if (size.isEmpty()
        || grade.isEmpty()
        || head.isEmpty()
        || places.isEmpty()
        || planes.isEmpty()
        || thread.isEmpty()
        || tightened.isPresent() != tightening.isPresent()) {
      return Optional.empty();
    }
    return Optional.of(
        new FaceBolts(
            size.get(), grade.get(), head.get(), places, planes.get(), thread.get(), tightening));
  }

  private Optional<BoltHead> head(Located given) {
    if (given instanceof LocatedText text) {
      if (text.text().equals("hexagon")) {
        return Optional.of(new BoltHead.Hexagon());
      }
      reading.gap(given.pointer());
      return Optional.empty();
    }
    return reading
        .fields("slotHead", given)
        .flatMap(
            fields -> {
              Optional<LocatedText> shape = fields.requireText("shape");
              Optional<Double> length = positive(fields, "length", Dimension.LENGTH);
              Optional<Double> width = positive(fields, "width", Dimension.LENGTH);
              Optional<Double> height = positive(fields, "height", Dimension.LENGTH);
              return shape.isEmpty() || length.isEmpty() || width.isEmpty() || height.isEmpty()
                  ? Optional.empty()
                  : Optional.of(
                      new BoltHead.InSlot(
                          shape.get().text(), length.get(), width.get(), height.get()));
            });
  }

  /** A torque, or a known preload. */
  Optional<Tightening> tightening(Located given) {
    boolean torque =
        given instanceof Located.LocatedObject object && object.find("torque").isPresent();
    return torque
        ? reading.fields("torqueTightening", given).flatMap(this::torque)
        : reading.fields("knownPreload", given).flatMap(this::preload);
  }

  private Optional<Tightening> torque(Fields fields) {
    Optional<Double> torque = positive(fields, "torque", Dimension.MOMENT);
    Optional<Located> scatterGiven = fields.require("scatter");
    Optional<Double> scatter = scatterGiven.flatMap(v -> values.quantity(v, Dimension.NONE));
    Optional<Located> low = fields.require("lowerFriction");
    Optional<Located> high = fields.require("upperFriction");
    Optional<Double> lower = low.flatMap(v -> values.positive(v, Dimension.NONE));
    Optional<Double> upper = high.flatMap(v -> values.positive(v, Dimension.NONE));
    Optional<Located> lossGiven = fields.find("loss");
    Optional<Double> loss =
        lossGiven.map(v -> values.quantity(v, Dimension.NONE)).orElse(Optional.of(0.0));
    Optional<LocatedText> source = fields.requireText("source");
    if (loss.isPresent() && !(loss.get() >= 0 && loss.get() <= Tightening.Torque.MOST_LOSS)) {
      Located where = lossGiven.orElseThrow();
      reading.error(
          where, where.words(), "a part of the preload from 0 to 0.99", "correct the number");
      return Optional.empty();
    }
    if (scatter.isPresent() && !(scatter.get() >= 0 && scatter.get() < 1)) {
      Located where = scatterGiven.orElseThrow();
      reading.error(
          where, where.words(), "a part of the torque from 0 to below 1", "correct the number");
      return Optional.empty();
    }
    if (torque.isEmpty()
        || scatter.isEmpty()
        || lower.isEmpty()
        || upper.isEmpty()
        || loss.isEmpty()
        || source.isEmpty()
        || wrongWay(low, lower, upper)) {
      return Optional.empty();
    }
    return Optional.of(
        new Tightening.Torque(
            torque.get(),
            scatter.get(),
            lower.get(),
            upper.get(),
            loss.get(),
            Source.declared(source.get().text())));
  }

  private Optional<Tightening> preload(Fields fields) {
    Optional<Located> low = fields.require("lower");
    Optional<Located> high = fields.require("upper");
    Optional<Double> lower = low.flatMap(v -> values.positive(v, Dimension.FORCE));
    Optional<Double> upper = high.flatMap(v -> values.positive(v, Dimension.FORCE));
    Optional<LocatedText> source = fields.requireText("source");
    if (lower.isEmpty() || upper.isEmpty() || source.isEmpty() || wrongWay(low, lower, upper)) {
      return Optional.empty();
    }
    return Optional.of(
        new Tightening.Preload(lower.get(), upper.get(), Source.declared(source.get().text())));
  }

  /** Whether bounds are the wrong way round; reports it. */
  private boolean wrongWay(
      Optional<Located> where, Optional<Double> lower, Optional<Double> upper) {
    if (where.isEmpty() || lower.isEmpty() || upper.isEmpty() || lower.get() <= upper.get()) {
      return false;
    }
    reading.error(
        where.get(),
        where.get().words() + ", more than the upper bound",
        "a lower bound that is not above the upper one",
        "exchange the two, or correct the number");
    return true;
  }

  private Optional<Double> positive(Fields fields, String key, Dimension dimension) {
    return fields.require(key).flatMap(v -> values.positive(v, dimension));
  }

  /** A whole number; the schema reports anything else. */
  Optional<Integer> count(Located value) {
    if (value instanceof LocatedNumber number
        && number.value() == (int) number.value()
        && number.value() >= 1) {
      return Optional.of((int) number.value());
    }
    reading.gap(value.pointer());
    return Optional.empty();
  }

  private Optional<Integer> planes(Located value) {
    Optional<Integer> count = count(value);
    if (count.filter(planes -> planes > FaceBolts.MOST_PLANES).isPresent()) {
      reading.error(
          value,
          value.words() + " shear planes",
          "1 or 2",
          "describe the plies with \"belongsTo\" and leave \"shearPlanes\" out: they make the planes");
      return Optional.empty();
    }
    return count;
  }

  private Optional<Boolean> truth(Located value) {
    if (value instanceof LocatedTruth truth) {
      return Optional.of(truth.value());
    }
    reading.gap(value.pointer());
    return Optional.empty();
  }
}
