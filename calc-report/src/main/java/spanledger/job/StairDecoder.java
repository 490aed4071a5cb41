package spanledger.job;

import java.util.List;
import java.util.Optional;
import spanledger.assembly.Guardrail;
import spanledger.assembly.Part;
import spanledger.assembly.Side;
import spanledger.assembly.Stair;
import spanledger.assembly.StairSite;
import spanledger.deck.Panel;
import spanledger.frame.Restraint;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedText;

/** Decodes the stairs of an assembly. */
final class StairDecoder {

  private final AssemblyFields values;
  private final Reading reading;
  private final FootDecoder feet;
  private final TurnDecoder turns;
  private final GuardrailDecoder guardrails;
  private final SiteDecoder sites;

  StairDecoder(AssemblyFields values) {
    this.values = values;
    this.reading = values.reading();
    this.feet = new FootDecoder(reading);
    this.turns = new TurnDecoder(reading);
    this.guardrails = new GuardrailDecoder(values);
    this.sites = new SiteDecoder(values);
  }

  Optional<Stair> decode(Located.Entry entry) {
    return reading.fields("stair", entry.value()).flatMap(f -> stair(entry.key(), f));
  }

  private Optional<Stair> stair(String name, Fields fields) {
    Optional<String> to = fields.requireText("to").map(LocatedText::text);
    Optional<Side> side = values.side(fields);
    Optional<Double> offset = values.distance(fields, "offset", 0);
    Optional<String> from = Optional.of(fields.findText("from")).filter(text -> !text.isEmpty());
    Optional<Double> ground = values.place(fields, "ground");
    Optional<Double> width = values.size(fields, "width");
    Optional<Integer> rises = fields.require("rises").flatMap(values::count);
    Optional<Located> givenGoing = fields.find("going");
    Optional<Double> going = givenGoing.flatMap(values::size);
    Optional<Located> givenPitch = fields.find("pitch");
    Optional<Double> pitch = givenPitch.flatMap(turns::slope);
    Optional<Part> stringer = values.part(fields, "stringers");
    Optional<Part> tread = values.part(fields, "treads");
    Optional<Panel> treadPanel = values.panel(fields, "treadPanel");
    Optional<List<Restraint>> foot = fields.require("foot").flatMap(feet::decode);
    Optional<StairSite> site = sites.stair(fields);
    Optional<Located> givenRails = fields.find("rails");
    Optional<Stair.StairRails> rails = givenRails.flatMap(this::rails);
    if (to.isEmpty()
        || side.isEmpty()
        || offset.isEmpty()
        || ground.isEmpty()
        || width.isEmpty()
        || rises.isEmpty()
        || (givenGoing.isPresent() && going.isEmpty())
        || (givenPitch.isPresent() && pitch.isEmpty())
        || stringer.isEmpty()
        || tread.isEmpty()
        || foot.isEmpty()
        || site.isEmpty()
        || (givenRails.isPresent() && rails.isEmpty())) {
      return Optional.empty();
    }
    return Optional.of(
        new Stair(
            name,
            to.get(),
            side.get(),
            offset.get(),
            from,
            ground.get(),
            width.get(),
            rises.get(),
            going,
            pitch,
            stringer.get(),
            tread.get(),
            treadPanel.map(Panel::name),
            foot.get(),
            rails,
            site.get()));
  }

  private Optional<Stair.StairRails> rails(Located value) {
    return reading.fields("stairRails", value).flatMap(this::rails);
  }

  private Optional<Stair.StairRails> rails(Fields fields) {
    Optional<Double> height = values.size(fields, "height");
    Optional<Part> topRail = values.part(fields, "topRail");
    Optional<List<Guardrail.MiddleRail>> middle = guardrails.middleRails(fields);
    Optional<Part> post = values.part(fields, "post");
    Optional<Double> spacing = values.size(fields, "postSpacing");
    return height.isPresent()
            && topRail.isPresent()
            && middle.isPresent()
            && post.isPresent()
            && spacing.isPresent()
        ? Optional.of(
            new Stair.StairRails(
                height.get(), topRail.get(), middle.get(), post.get(), spacing.get()))
        : Optional.empty();
  }
}
