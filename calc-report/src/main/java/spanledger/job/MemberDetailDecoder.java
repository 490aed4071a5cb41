package spanledger.job;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedText;
import spanledger.job.source.Located.LocatedTruth;
import spanledger.memberdesign.Detail;
import spanledger.memberdesign.MemberPick;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.resistance.member.DeclaredResistance;
import spanledger.resistance.member.Effect;
import spanledger.resistance.member.Hole;
import spanledger.resistance.member.MomentFactors;
import spanledger.resistance.member.Weld;

/** Decodes moment factors, welds, holes and declared resistances of members. */
final class MemberDetailDecoder {

  private static final Map<String, Weld.Method> METHODS =
      Map.of("mig", Weld.Method.MIG, "tig", Weld.Method.TIG);

  private static final Map<String, Effect> EFFECTS =
      Map.of(
          "axial", Effect.N,
          "shear-y", Effect.V_Y,
          "shear-z", Effect.V_Z,
          "torque", Effect.T,
          "moment-y", Effect.M_Y,
          "moment-z", Effect.M_Z);

  /** A place in a wall. */
  private record WallPlace(String wall, double at) {}

  private final Reading reading;
  private final Values values;
  private final MemberPickDecoder picks;

  MemberDetailDecoder(Reading reading, MemberPickDecoder picks) {
    this.reading = reading;
    this.values = new Values(reading);
    this.picks = picks;
  }

  /** Adds all details that the object gives; whether none has faults. */
  boolean decode(Fields fields, List<Detail> into) {
    boolean sound = all(fields, "moments", "momentFactors", this::moments, into);
    sound &= all(fields, "welds", "memberWeld", this::weld, into);
    sound &= all(fields, "holes", "memberHole", this::hole, into);
    sound &= all(fields, "declared", "declaredResistance", this::declared, into);
    return sound;
  }

  private boolean all(
      Fields fields,
      String key,
      String kind,
      Function<Fields, Optional<Detail>> decoder,
      List<Detail> into) {
    boolean sound = true;
    for (Located one : fields.findList(key)) {
      Optional<Detail> decoded = reading.fields(kind, one).flatMap(decoder);
      decoded.ifPresent(into::add);
      sound &= decoded.isPresent();
    }
    return sound;
  }

  private Optional<Detail> moments(Fields fields) {
    Optional<MemberPick> members = picks.decode(fields);
    MomentFactors usual = MomentFactors.uniform();
    Optional<Double> c1 = factor(fields, "c1", usual.c1(), true);
    Optional<Double> c2 = factor(fields, "c2", usual.c2(), false);
    Optional<Double> c3 = factor(fields, "c3", usual.c3(), false);
    Optional<Double> kz = factor(fields, "kz", usual.kz(), true);
    Optional<Double> kw = factor(fields, "kw", usual.kw(), true);
    Optional<Double> cb = factor(fields, "cb", usual.cb(), true);
    Optional<Double> height =
        fields
            .find("loadHeight")
            .map(v -> values.quantity(v, Dimension.LENGTH))
            .orElse(Optional.of(usual.loadHeight()));
    Optional<LocatedText> reason = fields.requireText("reason");
    Optional<Source> source = source(fields);
    if (members.isEmpty()
        || c1.isEmpty()
        || c2.isEmpty()
        || c3.isEmpty()
        || kz.isEmpty()
        || kw.isEmpty()
        || cb.isEmpty()
        || height.isEmpty()
        || reason.isEmpty()
        || source.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Detail.Moments(
            members.get(),
            new MomentFactors(
                c1.get(),
                c2.get(),
                c3.get(),
                kz.get(),
                kw.get(),
                height.get(),
                cb.get(),
                reason.get().text(),
                source.get())));
  }

  private Optional<Double> factor(Fields fields, String key, double usual, boolean positive) {
    return fields
        .find(key)
        .map(
            v -> positive ? values.positive(v, Dimension.NONE) : values.quantity(v, Dimension.NONE))
        .orElse(Optional.of(usual));
  }

  private Optional<Detail> weld(Fields fields) {
    Optional<MemberPick> members = picks.decode(fields);
    String name = fields.requireText("name").map(LocatedText::text).orElse("");
    Optional<Located> across = fields.find("across");
    Optional<Located> along = fields.find("along");
    Optional<Weld.Method> method = fields.require("method").flatMap(m -> values.word(m, METHODS));
    Optional<Located> reachGiven = fields.find("reach");
    Optional<Double> reach = reachGiven.flatMap(v -> values.positive(v, Dimension.LENGTH));
    Optional<Source> source = source(fields);
    if (across.isPresent() && along.isPresent()) {
      reading.error(
          fields.object(),
          "a weld both across and along",
          "one of across and along",
          "make two welds of it");
      return Optional.empty();
    }
    Optional<Double> place =
        across.map(v -> values.notNegative(v, Dimension.LENGTH)).orElse(Optional.of(0.0));
    Optional<WallPlace> wall = along.map(this::wallPlace).orElse(Optional.of(new WallPlace("", 0)));
    if (members.isEmpty()
        || method.isEmpty()
        || reach.isPresent() != reachGiven.isPresent()
        || source.isEmpty()
        || place.isEmpty()
        || wall.isEmpty()) {
      return Optional.empty();
    }
    if (across.isPresent() && !picks.reach(members.get(), place.get(), across.get())) {
      return Optional.empty();
    }
    OptionalDouble far = reach.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    Weld weld;
    if (across.isPresent()) {
      weld = new Weld.Across(name, place.get(), method.get(), far, source.get());
    } else if (along.isPresent()) {
      weld =
          new Weld.Along(name, wall.get().wall(), wall.get().at(), method.get(), far, source.get());
    } else {
      weld = new Weld.WithoutPlace(name);
    }
    return Optional.of(new Detail.Welded(members.get(), weld));
  }

  private Optional<Detail> hole(Fields fields) {
    Optional<MemberPick> members = picks.decode(fields);
    String name = fields.requireText("name").map(LocatedText::text).orElse("");
    Optional<Located> placeGiven = fields.require("place");
    Optional<Double> place = placeGiven.flatMap(v -> values.notNegative(v, Dimension.LENGTH));
    Optional<WallPlace> in = fields.require("in").flatMap(this::wallPlace);
    Optional<Located> diameterGiven = fields.require("diameter");
    Optional<Double> diameter = diameterGiven.flatMap(v -> values.positive(v, Dimension.LENGTH));
    Optional<Boolean> filled = fields.require("filled").flatMap(this::truth);
    Optional<Source> source = source(fields);
    if (members.isEmpty()
        || place.isEmpty()
        || in.isEmpty()
        || diameter.isEmpty()
        || filled.isEmpty()
        || source.isEmpty()) {
      return Optional.empty();
    }
    if (!picks.reach(members.get(), place.get(), placeGiven.get())
        || !picks.isWide(members.get(), in.get().wall(), diameter.get(), diameterGiven.get())) {
      return Optional.empty();
    }
    return Optional.of(
        new Detail.Drilled(
            members.get(),
            new Hole(
                name,
                place.get(),
                in.get().wall(),
                in.get().at(),
                diameter.get(),
                filled.get(),
                source.get())));
  }

  private Optional<Detail> declared(Fields fields) {
    Optional<MemberPick> members = picks.decode(fields);
    String name = fields.requireText("name").map(LocatedText::text).orElse("");
    Optional<Effect> effect = fields.require("effect").flatMap(e -> values.word(e, EFFECTS));
    Optional<Double> positive = resistance(fields, "positive", effect);
    Optional<Double> negative = resistance(fields, "negative", effect);
    Optional<Source> source = source(fields);
    if (members.isEmpty()
        || effect.isEmpty()
        || positive.isEmpty()
        || negative.isEmpty()
        || source.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Detail.Resists(
            members.get(),
            new DeclaredResistance(
                name, effect.get(), positive.get(), negative.get(), source.get())));
  }

  private Optional<Double> resistance(Fields fields, String key, Optional<Effect> effect) {
    Optional<Located> value = fields.require(key);
    return value.flatMap(v -> effect.flatMap(e -> values.positive(v, e.dimension())));
  }

  private Optional<WallPlace> wallPlace(Located given) {
    Optional<Fields> fields = reading.fields("wallPlace", given);
    Optional<LocatedText> wall = fields.flatMap(f -> f.requireText("wall"));
    Optional<Double> at =
        fields.flatMap(f -> f.require("at")).flatMap(v -> values.notNegative(v, Dimension.LENGTH));
    return wall.flatMap(w -> at.map(a -> new WallPlace(w.text(), a)));
  }

  private Optional<Boolean> truth(Located value) {
    if (value instanceof LocatedTruth truth) {
      return Optional.of(truth.value());
    }
    reading.gap(value.pointer());
    return Optional.empty();
  }

  private static Optional<Source> source(Fields fields) {
    return fields.requireText("source").map(text -> Source.declared(text.text()));
  }
}
