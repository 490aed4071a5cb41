package spanledger.job;

import java.util.List;
import java.util.Optional;
import spanledger.action.SegmentLoad;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.Segment;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedArray;
import spanledger.job.source.Located.LocatedObject;
import spanledger.quantity.Dimension;

/** Decodes the loads on members in load cases of the job. */
final class MemberLoadDecoder {

  private final Reading reading;
  private final Values values;
  private final Directions directions;
  private final Names<Member> members;
  private final Frame frame;

  MemberLoadDecoder(Reading reading, Names<Member> members, Frame frame) {
    this.reading = reading;
    this.values = new Values(reading);
    this.directions = new Directions(reading);
    this.members = members;
    this.frame = frame;
  }

  /**
   * A load on a member.
   *
   * @param name the name of its load case
   */
  Optional<List<SegmentLoad>> decode(String name, Located load) {
    boolean spread = load instanceof LocatedObject object && object.find("intensity").isPresent();
    Optional<Fields> fields = reading.fields(spread ? "memberLineLoad" : "memberPointLoad", load);
    return fields.flatMap(f -> spread ? line(name, f) : point(name, f));
  }

  private Optional<List<SegmentLoad>> point(String name, Fields fields) {
    Optional<List<Segment>> along = segments(fields);
    Optional<Directions.Direction> direction = fields.require("direction").flatMap(directions::any);
    Optional<Double> force =
        fields.require("force").flatMap(f -> values.quantity(f, Dimension.FORCE));
    Optional<Double> at = fields.require("at").flatMap(d -> distance(d, along));
    if (along.isEmpty() || direction.isEmpty() || force.isEmpty() || at.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        List.of(new MemberLoads(along.get(), direction.get(), name).point(force.get(), at.get())));
  }

  private Optional<List<SegmentLoad>> line(String name, Fields fields) {
    Optional<List<Segment>> along = segments(fields);
    Optional<Directions.Direction> direction = fields.require("direction").flatMap(directions::any);
    Optional<Intensity> intensity = fields.require("intensity").flatMap(this::intensity);
    Optional<Double> from =
        fields.find("from").map(d -> distance(d, along)).orElse(Optional.of(0.0));
    Optional<Double> to =
        fields
            .find("to")
            .map(d -> distance(d, along))
            .orElseGet(() -> along.map(MemberLoads::length));
    if (along.isEmpty()
        || direction.isEmpty()
        || intensity.isEmpty()
        || from.isEmpty()
        || to.isEmpty()) {
      return Optional.empty();
    }
    if (from.get() + Tolerance.SAME_PLACE >= to.get()) {
      reading.error(
          fields.object(),
          "a load from " + Lengths.words(from.get()) + " to " + Lengths.words(to.get()),
          "\"to\" beyond \"from\" by more than 1 mm",
          "correct \"from\" or \"to\"");
      return Optional.empty();
    }
    return Optional.of(
        new MemberLoads(along.get(), direction.get(), name)
            .distributed(intensity.get().start(), intensity.get().end(), from.get(), to.get()));
  }

  private Optional<List<Segment>> segments(Fields fields) {
    return fields.require("member").flatMap(members::resolve).map(frame::segmentsOf);
  }

  private Optional<Double> distance(Located value, Optional<List<Segment>> along) {
    Optional<Double> read = values.quantity(value, Dimension.LENGTH);
    if (read.isEmpty() || along.isEmpty()) {
      return Optional.empty();
    }
    double length = MemberLoads.length(along.get());
    if (read.get() < 0 || read.get() > length + Tolerance.SAME_PLACE) {
      reading.error(
          value,
          value.words() + ", which is off the member",
          "a distance from its start of 0 mm to its length of " + Lengths.words(length),
          "correct the distance, or the member");
      return Optional.empty();
    }
    return Optional.of(Math.min(read.get(), length));
  }

  /** The intensity at both ends of a stretch, N/mm. */
  private record Intensity(double start, double end) {}

  private Optional<Intensity> intensity(Located value) {
    if (!(value instanceof LocatedArray list)) {
      return values.quantity(value, Dimension.LINE_LOAD).map(q -> new Intensity(q, q));
    }
    if (list.elements().size() != 2) {
      reading.gap(value.pointer());
      return Optional.empty();
    }
    Optional<Double> start = values.quantity(list.elements().get(0), Dimension.LINE_LOAD);
    Optional<Double> end = values.quantity(list.elements().get(1), Dimension.LINE_LOAD);
    return start.isPresent() && end.isPresent()
        ? Optional.of(new Intensity(start.get(), end.get()))
        : Optional.empty();
  }
}
