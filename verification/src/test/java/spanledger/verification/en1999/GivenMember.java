package spanledger.verification.en1999;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import spanledger.action.Figure;
import spanledger.material.Alloy;
import spanledger.material.BucklingClass;
import spanledger.material.HeatAffectedStrengths;
import spanledger.material.ProductForm;
import spanledger.material.ThicknessRange;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.resistance.en1999.En1999;
import spanledger.resistance.en1999.Figures;
import spanledger.resistance.member.BucklingLength;
import spanledger.resistance.member.BucklingMode;
import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.MemberCase;
import spanledger.resistance.member.MemberSections;
import spanledger.resistance.member.PreparedMember;
import spanledger.section.Angle;
import spanledger.section.Channel;
import spanledger.section.ISection;
import spanledger.section.RectangularHollow;
import spanledger.section.RoundHollow;
import spanledger.section.Section;
import spanledger.section.Shape;
import spanledger.section.SolidRectangle;
import spanledger.section.SolidRound;
import spanledger.tables.MemberRuleTables;

/** Members as tests give them. */
final class GivenMember {

  static final Source CASE = Source.declared("given for this case");

  private GivenMember() {}

  static CodeFigures figures() {
    return MemberRuleTables.figures(En1999.ID);
  }

  /** The figures with another γ_M1. */
  static CodeFigures figures(double yielding) {
    return figures()
        .with(
            new Figure(
                Figures.YIELDING,
                "partial factor",
                Double.toString(yielding),
                yielding,
                Dimension.NONE,
                CASE,
                ""));
  }

  static Alloy alloy(double proof, double ultimate, BucklingClass bucklingClass) {
    return new Alloy(
        "case alloy",
        Set.of(ProductForm.OPEN_PROFILE),
        new ThicknessRange(0, Double.POSITIVE_INFINITY),
        proof,
        ultimate,
        bucklingClass,
        Optional.of(new HeatAffectedStrengths(proof / 2, ultimate * 0.6, CASE)),
        OptionalDouble.empty(),
        70000,
        27000,
        2.7e-6,
        CASE,
        "");
  }

  static Shape shape(String kind, double... s) {
    return switch (kind) {
      case "tube" -> new RectangularHollow(s[0], s[1], s[2], s[3]);
      case "i" -> new ISection(s[0], s[1], s[2], s[3]);
      case "channel" -> new Channel(s[0], s[1], s[2], s[3]);
      case "angle" -> new Angle(s[0], s[1], s[2]);
      case "round tube" -> new RoundHollow(s[0], s[1]);
      case "bar" -> new SolidRectangle(s[0], s[1]);
      case "round bar" -> new SolidRound(s[0]);
      default -> throw new IllegalArgumentException("Unknown shape " + kind);
    };
  }

  static Map<BucklingMode, BucklingLength> lengths(double... four) {
    Map<BucklingMode, BucklingLength> lengths = new EnumMap<>(BucklingMode.class);
    for (BucklingMode mode : BucklingMode.values()) {
      lengths.put(mode, new BucklingLength(four[mode.ordinal()], "given", CASE));
    }
    return lengths;
  }

  static MemberCase member(Shape shape, Alloy alloy, double... lengths) {
    return new MemberCase(
        "case",
        MemberSections.of(new Section("case section", shape)).orElseThrow(),
        alloy,
        lengths(lengths));
  }

  static MemberCase equalLengths(Shape shape, Alloy alloy, double length) {
    return member(shape, alloy, length, length, length, length);
  }

  static PreparedMember prepared(double yielding, MemberCase member) {
    return (PreparedMember) new En1999(figures(yielding)).prepare(member);
  }

  /** The member of a case in a data file. */
  static PreparedMember of(JsonNode given) {
    List<Double> sizes = new ArrayList<>();
    given.required("sizes").forEach(size -> sizes.add(size.asDouble()));
    List<Double> lengths = new ArrayList<>();
    given.required("lengths").forEach(length -> lengths.add(length.asDouble()));
    MemberCase member =
        member(
            shape(
                given.required("shape").asText(),
                sizes.stream().mapToDouble(Double::doubleValue).toArray()),
            alloy(
                given.required("fo").asDouble(),
                given.required("fu").asDouble(),
                BucklingClass.valueOf(given.required("class").asText())),
            lengths.stream().mapToDouble(Double::doubleValue).toArray());
    return prepared(given.required("gammaM1").asDouble(), member);
  }
}
