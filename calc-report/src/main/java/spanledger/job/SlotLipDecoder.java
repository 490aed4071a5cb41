package spanledger.job;

import java.util.List;
import java.util.Optional;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedText;
import spanledger.job.source.Quoted;
import spanledger.joint.FaceNormal;
import spanledger.joint.SlotLips;
import spanledger.material.Alloy;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.section.OutlineShape;
import spanledger.section.Section;
import spanledger.section.feature.Slot;
import spanledger.tables.NearMiss;

/** Decodes the lips of a slot: those of a section's outline, or declared ones. */
final class SlotLipDecoder {

  private final Reading reading;
  private final Values values;
  private final JointParts parts;
  private final Names<Section> sections;

  SlotLipDecoder(Reading reading, JointParts parts, Names<Section> sections) {
    this.reading = reading;
    this.values = new Values(reading);
    this.parts = parts;
    this.sections = sections;
  }

  Optional<SlotLips> decode(Located given, Optional<FaceNormal> normal) {
    boolean measured =
        given instanceof Located.LocatedObject object && object.find("section").isPresent();
    return measured
        ? reading.fields("measuredLips", given).flatMap(f -> measured(f, normal))
        : reading.fields("declaredLips", given).flatMap(f -> declared(f, normal));
  }

  private Optional<SlotLips> measured(Fields fields, Optional<FaceNormal> normal) {
    Optional<Boolean> along = along(fields, normal);
    Optional<Located> named = fields.require("section");
    Optional<Section> section = named.flatMap(sections::resolve);
    Optional<LocatedText> slotName = fields.requireText("slot");
    Optional<Slot> slot = section.flatMap(s -> slotName.flatMap(n -> slot(s, n)));
    Optional<Located> material = fields.require("material");
    Optional<Alloy> alloy = material.flatMap(m -> parts.alloy(m, slot.map(Slot::lip)));
    Optional<Double> toEnd = toEnd(fields);
    if (along.isEmpty()
        || section.isEmpty()
        || slot.isEmpty()
        || alloy.isEmpty()
        || toEnd.isEmpty()) {
      return Optional.empty();
    }
    Slot found = slot.get();
    return Optional.of(
        new SlotLips(
            along.get(),
            (found.headWidth() - found.opening()) / 2,
            found.lip(),
            found.opening(),
            toEnd.get(),
            alloy.get(),
            Source.derived(
                "measured in the outline of " + section.get().name() + ", slot " + found.name())));
  }

  private Optional<Slot> slot(Section section, LocatedText name) {
    List<Slot> slots =
        section.shape() instanceof OutlineShape outline
            ? outline.features().stream()
                .filter(Slot.class::isInstance)
                .map(Slot.class::cast)
                .toList()
            : List.of();
    Optional<Slot> found = slots.stream().filter(s -> s.name().equals(name.text())).findFirst();
    if (found.isEmpty()) {
      List<String> names = slots.stream().map(Slot::name).toList();
      reading.error(
          name,
          Quoted.text(name.text())
              + ", but section "
              + Quoted.text(section.name())
              + " has no"
              + " slot of this name",
          names.isEmpty()
              ? "a section whose outline names a slot"
              : "one of " + String.join(", ", names),
          NearMiss.of(name.text(), names)
              .map(near -> "did you mean " + Quoted.text(near) + "?")
              .orElse("name the slot in the outline, or give the sizes of the lips"));
    }
    return found;
  }

  private Optional<SlotLips> declared(Fields fields, Optional<FaceNormal> normal) {
    Optional<Boolean> along = along(fields, normal);
    Optional<Double> reach = size(fields, "reach");
    Optional<Double> thickness = size(fields, "thickness");
    Optional<Double> opening = size(fields, "opening");
    Optional<Alloy> alloy = fields.require("material").flatMap(m -> parts.alloy(m, thickness));
    Optional<Double> toEnd = toEnd(fields);
    Optional<LocatedText> source = fields.requireText("source");
    if (along.isEmpty()
        || reach.isEmpty()
        || thickness.isEmpty()
        || opening.isEmpty()
        || alloy.isEmpty()
        || toEnd.isEmpty()
        || source.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new SlotLips(
            along.get(),
            reach.get(),
            thickness.get(),
            opening.get(),
            toEnd.get(),
            alloy.get(),
            Source.declared(source.get().text())));
  }

  private Optional<Boolean> along(Fields fields, Optional<FaceNormal> normal) {
    return fields.require("along").flatMap(v -> parts.isFirst(normal, v));
  }

  private Optional<Double> toEnd(Fields fields) {
    return fields
        .find("toEnd")
        .map(v -> values.positive(v, Dimension.LENGTH))
        .orElse(Optional.of(Double.POSITIVE_INFINITY));
  }

  private Optional<Double> size(Fields fields, String key) {
    return fields.require(key).flatMap(v -> values.positive(v, Dimension.LENGTH));
  }
}
