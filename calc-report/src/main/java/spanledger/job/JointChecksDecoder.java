package spanledger.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import spanledger.frame.Support;
import spanledger.frame.Vector;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedText;
import spanledger.job.source.Quoted;
import spanledger.joint.BracketJoint;
import spanledger.joint.FootLie;
import spanledger.joint.FootType;
import spanledger.joint.JointType;
import spanledger.jointdesign.Ends;
import spanledger.jointdesign.FootPlacing;
import spanledger.jointdesign.JointDesign;
import spanledger.jointdesign.JointPlacing;
import spanledger.jointdesign.KeptStiffness;
import spanledger.jointdesign.MetalContacts;
import spanledger.memberdesign.MemberPick;
import spanledger.overturning.Standing;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.resistance.joint.JointCode;
import spanledger.resistance.joint.Surroundings;
import spanledger.tables.ContactTables;
import spanledger.tables.NearMiss;

/** Decodes by which code joints are checked, and where they are. */
final class JointChecksDecoder {

  private static final Map<String, Ends> ENDS =
      Map.of("start", Ends.START, "end", Ends.END, "both", Ends.BOTH);

  private final Reading reading;
  private final Values values;
  private final PublishedNames published;
  private final CodeFiguresDecoder figures;
  private final Map<String, JointCodeChoice> codes;
  private final MemberPickDecoder picks;
  private final Names<Support> supports;
  private final Names<JointType> joints;
  private final Standing.Ground site;

  /**
   * @param site how the ground lies where a foot does not say
   */
  JointChecksDecoder(
      Reading reading,
      Structure structure,
      Map<String, JointCodeChoice> codes,
      Standing.Ground site) {
    this.reading = reading;
    this.values = new Values(reading);
    this.published = new PublishedNames(reading);
    this.figures = new CodeFiguresDecoder(reading);
    this.codes = codes;
    this.picks = new MemberPickDecoder(reading, structure.members());
    this.supports = structure.supports();
    this.joints = structure.described();
    this.site = site;
  }

  /** What the job says; empty if it has faults. */
  Optional<JointDesign> decode(Located given) {
    return reading.fields("jointChecks", given).flatMap(this::design);
  }

  private Optional<JointDesign> design(Fields fields) {
    Optional<JointCodeChoice> choice =
        fields.require("code").flatMap(name -> published.choose(name, "joint code", codes));
    Optional<JointCode> code =
        figures
            .decode(fields, choice.map(JointCodeChoice::figures))
            .flatMap(wanted -> choice.map(c -> c.with(wanted)));
    boolean sound = true;
    List<JointPlacing> placed = new ArrayList<>();
    for (Located one : fields.findList("joints")) {
      Optional<JointPlacing> placing = reading.fields("jointUse", one).flatMap(this::joint);
      placing.ifPresent(placed::add);
      sound &= placing.isPresent();
    }
    List<FootPlacing> feet = new ArrayList<>();
    for (Located one : fields.findList("feet")) {
      Optional<FootPlacing> placing = reading.fields("footUse", one).flatMap(this::foot);
      placing.ifPresent(feet::add);
      sound &= placing.isPresent();
    }
    Optional<Located> around = fields.find("surroundings");
    Optional<Surroundings> surroundings =
        around.flatMap(word -> values.word(word, ContactTables.SURROUNDINGS));
    sound &= around.isPresent() == surroundings.isPresent();
    return sound && code.isPresent()
        ? Optional.of(
            new JointDesign(
                code,
                placed,
                feet,
                new MetalContacts(ContactTables.standard(), surroundings),
                List.of()))
        : Optional.empty();
  }

  private Optional<JointPlacing> joint(Fields fields) {
    Optional<MemberPick> members = picks.decode(fields);
    Optional<Ends> ends =
        fields.find("ends").map(e -> values.word(e, ENDS)).orElse(Optional.of(Ends.BOTH));
    Optional<Located> named = fields.require("joint");
    Optional<JointType> type = named.flatMap(joints::resolve);
    if (type.isPresent() && !(type.get() instanceof BracketJoint)) {
      reading.error(
          named.orElseThrow(),
          "a foot in place of a joint of member ends",
          "a joint of kind \"bracket\" or \"brackets\"",
          "name it under \"feet\", or name another joint");
      return Optional.empty();
    }
    Optional<Located> asAnalysed = fields.find("asAnalysed");
    Optional<KeptStiffness> kept =
        asAnalysed.flatMap(why -> reading.fields("asAnalysed", why)).flatMap(this::kept);
    return members.isEmpty()
            || ends.isEmpty()
            || type.isEmpty()
            || asAnalysed.isPresent() != kept.isPresent()
        ? Optional.empty()
        : Optional.of(new JointPlacing(members.get(), ends.get(), (BracketJoint) type.get(), kept));
  }

  private Optional<KeptStiffness> kept(Fields fields) {
    Optional<LocatedText> reason = fields.requireText("reason");
    Optional<LocatedText> source = fields.requireText("source");
    return reason.isEmpty() || source.isEmpty()
        ? Optional.empty()
        : Optional.of(new KeptStiffness(reason.get().text(), Source.declared(source.get().text())));
  }

  private Optional<FootPlacing> foot(Fields fields) {
    List<String> nodes = new ArrayList<>();
    boolean sound = true;
    for (Located one : fields.requireList("supports")) {
      Optional<List<String>> found = nodes(one);
      found.ifPresent(nodes::addAll);
      sound &= found.isPresent();
    }
    Optional<Located> named = fields.require("joint");
    Optional<JointType> type = named.flatMap(joints::resolve);
    if (type.isPresent() && type.get() instanceof BracketJoint) {
      reading.error(
          named.orElseThrow(),
          "a joint of member ends in place of a foot",
          "a joint of kind \"base-plate\", \"clamp-foot\" or \"declared-foot\"",
          "name it under \"joints\", or name another foot");
      return Optional.empty();
    }
    Optional<FootLie> lie = lie(fields);
    return !sound || lie.isEmpty() || type.isEmpty() || !(type.get() instanceof FootType foot)
        ? Optional.empty()
        : Optional.of(new FootPlacing(new MemberPick(nodes), foot, lie.get()));
  }

  /** How a foot lies; empty if that has faults. */
  private Optional<FootLie> lie(Fields fields) {
    Optional<Located> turned = fields.find("turn");
    Optional<Double> turn = turned.flatMap(t -> values.quantity(t, Dimension.NONE));
    Optional<Located> sloping = fields.find("ground");
    Optional<Standing.Ground> ground = sloping.flatMap(new SlopeDecoder(reading)::decode);
    if (turned.isPresent() != turn.isPresent() || sloping.isPresent() != ground.isPresent()) {
      return Optional.empty();
    }
    Standing.Ground lies = ground.orElse(site);
    Vector downhill = lies.downhill();
    return Optional.of(
        new FootLie(turn.orElse(0.0), lies.slope(), Math.atan2(downhill.y(), downhill.x())));
  }

  /** The nodes of the supports that a text names; a name that fits none is reported. */
  private Optional<List<String>> nodes(Located given) {
    if (!(given instanceof LocatedText text)) {
      reading.gap(given.pointer());
      return Optional.empty();
    }
    TreeSet<String> known = new TreeSet<>();
    List<String> nodes = new ArrayList<>();
    boolean faulty = false;
    for (Located.Entry entry : supports.entries()) {
      known.add(entry.key());
      if (MemberPick.matches(text.text(), entry.key())) {
        Optional<Support> support = supports.usable(entry.key());
        support.ifPresent(s -> nodes.add(s.node().name()));
        faulty |= support.isEmpty();
      }
    }
    if (nodes.isEmpty() && !faulty && supports.openMakers().isEmpty()) {
      reading.error(
          text,
          Quoted.text(text.text()) + ", which fits no support",
          "the name of a support, or of several with * for any characters",
          NearMiss.of(text.text(), known)
              .map(near -> "did you mean " + Quoted.text(near) + "?")
              .orElse("correct the name, or remove it"));
    }
    return nodes.isEmpty() ? Optional.empty() : Optional.of(nodes);
  }
}
