package spanledger.job;

import java.util.List;
import java.util.Optional;
import spanledger.action.Chains;
import spanledger.action.Figure;
import spanledger.action.LoadPath;
import spanledger.action.LoadTrain;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.Vector;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedNumber;
import spanledger.job.source.Located.LocatedText;
import spanledger.job.source.Quoted;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** Decodes trains of loads. */
final class TrainDecoder {

  private final Reading reading;
  private final Values values;
  private final Names<Member> members;
  private final Frame frame;

  TrainDecoder(Reading reading, Names<Member> members, Frame frame) {
    this.reading = reading;
    this.values = new Values(reading);
    this.members = members;
    this.frame = frame;
  }

  Names<LoadTrain> decode(Located trains) {
    Names<LoadTrain> names = new Names<>(reading, "train");
    for (Located.Entry entry : reading.named(trains)) {
      names.add(entry, reading.fields("train", entry.value()).flatMap(f -> train(entry.key(), f)));
    }
    return names;
  }

  private Optional<LoadTrain> train(String name, Fields fields) {
    List<Located> memberNames = fields.requireList("members");
    Optional<List<Member>> along = members.resolveAll(memberNames);
    Optional<Integer> number = fields.require("number").flatMap(this::count);
    Optional<Double> spacing =
        fields.require("spacing").flatMap(s -> values.positive(s, Dimension.LENGTH));
    Optional<Located> written = fields.require("force");
    Optional<Double> force = written.flatMap(f -> values.positive(f, Dimension.FORCE));
    Optional<LocatedText> source = fields.requireText("source");
    if (along.isEmpty()
        || along.get().isEmpty()
        || number.isEmpty()
        || spacing.isEmpty()
        || force.isEmpty()
        || source.isEmpty()) {
      return Optional.empty();
    }
    Optional<LoadPath> path = new Chains(frame).path(along.get(), Vector.DOWN);
    if (path.isEmpty()) {
      reading.error(
          memberNames.get(memberNames.size() - 1),
          "members that do not follow each other, in train " + Quoted.text(name),
          "members in order, each beginning at the node where the one before ends",
          "correct the list or its order");
      return Optional.empty();
    }
    double train = (number.get() - 1) * spacing.get();
    if (train > path.get().length()) {
      reading.warning(
          fields.object(),
          "a train of "
              + Lengths.words(train)
              + " on members of "
              + Lengths.words(path.get().length())
              + " together",
          "a train that may stand on its members as a whole; of this one some force is always off"
              + " them",
          "name all members that it walks along, or correct number and spacing");
    }
    Figure figure =
        new Figure(
            "train." + name,
            "each of " + number.get() + " loads that follow each other",
            written.get() instanceof LocatedText text ? text.text().strip() : "",
            force.get(),
            Dimension.FORCE,
            Source.declared(source.get().text()),
            "");
    return Optional.of(new LoadTrain(name, path.get(), number.get(), spacing.get(), figure));
  }

  /** A whole number; the schema reports anything else. */
  private Optional<Integer> count(Located value) {
    if (value instanceof LocatedNumber number && number.value() == (int) number.value()) {
      return Optional.of((int) number.value());
    }
    reading.gap(value.pointer());
    return Optional.empty();
  }
}
