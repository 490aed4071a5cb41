package spanledger.overturning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import spanledger.action.ActionCategory;
import spanledger.action.EquilibriumRule;
import spanledger.action.Figure;
import spanledger.action.Footprint;
import spanledger.action.LoadTrain;
import spanledger.action.MovingLoad;
import spanledger.action.Rail;
import spanledger.action.RailKind;
import spanledger.action.RailSense;
import spanledger.action.RuleSet;
import spanledger.action.SegmentLoad;
import spanledger.action.Surface;
import spanledger.action.UserCase;
import spanledger.frame.Member;
import spanledger.frame.MemberRole;
import spanledger.frame.Node;
import spanledger.frame.Segment;
import spanledger.frame.Vector;

/**
 * The variable loads of a structure as they may act on it as a whole. Moments are linear in the
 * place of a force, so one that may stand anywhere is worst at an end of what it stands on.
 */
final class LeadingLoads {

  /** Rails whose outward directions agree as well as this, as a cosine, are on one side. */
  private static final double ONE_SIDE = 1 - 1e-9;

  private final StandingStructure structure;
  private final List<Alternative> floorLoads = new ArrayList<>();
  private final List<Alternative> railLoads = new ArrayList<>();
  private final List<Alternative> windCases = new ArrayList<>();
  private final List<Acting> imposed = new ArrayList<>();

  /**
   * Loads of which only one may act at a time.
   *
   * @param words what acts
   * @param acting its parts
   */
  record Alternative(String words, List<Acting> acting) {
    Alternative {
      acting = List.copyOf(acting);
    }
  }

  LeadingLoads(StandingStructure structure) {
    this.structure = structure;
    addImposed();
    addFloorLoads();
    addRailLoads();
    for (UserCase user : structure.userCases()) {
      if (user.category() == ActionCategory.WIND) {
        windCases.add(new Alternative(user.loads().name(), LoadForces.of(user.loads())));
      }
    }
  }

  /** Area loads and imposed cases of the job, each part of which acts or is absent. */
  List<Acting> imposed() {
    return imposed;
  }

  /** What may lead a rule beside nothing or beside imposed loads, one at a time. */
  List<Alternative> alternatives(EquilibriumRule rule) {
    return switch (rule.leading()) {
      case NONE -> List.of(new Alternative("permanent load alone", List.of()));
      case FLOOR -> floorLoads;
      case GUARDRAIL -> railLoads;
      case WIND -> windCases;
    };
  }

  /** The factor on the load that leads. */
  static Optional<Figure> factor(EquilibriumRule rule) {
    return Optional.ofNullable(
        rule.factors()
            .get(
                switch (rule.leading()) {
                  case NONE, FLOOR -> ActionCategory.IMPOSED;
                  case GUARDRAIL -> ActionCategory.GUARDRAIL;
                  case WIND -> ActionCategory.WIND;
                }));
  }

  private void addImposed() {
    for (Surface floor : structure.floors()) {
      imposed.add(new FloorWeight(floor, structure.rules().figure(RuleSet.FLOOR_AREA).value()));
    }
    for (UserCase user : structure.userCases()) {
      if (user.category() == ActionCategory.IMPOSED || user.category() == ActionCategory.OTHER) {
        imposed.addAll(LoadForces.of(user.loads()));
      }
    }
  }

  private void addFloorLoads() {
    List<Member> floorMembers =
        structure.frame().members().stream().filter(m -> m.role() == MemberRole.FLOOR).toList();
    Optional<Figure> point = structure.rules().find(RuleSet.FLOOR_POINT);
    if (point.isPresent()) {
      for (Member member : floorMembers) {
        for (Segment segment : structure.frame().segmentsOf(member)) {
          addPoint(point.get(), segment.name() + " start", segment.from());
          addPoint(point.get(), segment.name() + " end", segment.to());
        }
      }
      for (Surface floor : structure.floors()) {
        for (Node corner : floor.corners()) {
          addPoint(point.get(), "corner " + corner.name() + " of " + floor.name(), corner.place());
        }
      }
    }
    structure
        .rules()
        .find(RuleSet.FLOOR_LINE)
        .ifPresent(line -> floorMembers.forEach(member -> addLine(line, member)));
    structure.trains().forEach(this::addTrain);
  }

  private void addPoint(Figure point, String where, Vector place) {
    String words = point.words() + ": " + where;
    floorLoads.add(new Alternative(words, List.of(LineWeight.at(words, place, point.value()))));
  }

  private void addLine(Figure line, Member member) {
    List<Segment> segments = structure.frame().segmentsOf(member);
    double length = segments.stream().mapToDouble(Segment::length).sum();
    String words = line.words() + ": " + member.name();
    floorLoads.add(
        new Alternative(
            words,
            List.of(
                new LineWeight(
                    words,
                    segments.get(0).from(),
                    segments.get(segments.size() - 1).to(),
                    line.value() * length))));
  }

  /** A train where one of its forces stands at an end of a segment, each in turn. */
  private void addTrain(LoadTrain train) {
    MovingLoad load =
        new MovingLoad(
            train.name(),
            train.force(),
            new Footprint.Train(train.number(), train.spacing()),
            List.of(train.path()));
    TreeSet<Double> places = new TreeSet<>();
    for (double mark : train.path().marks()) {
      for (int i = 0; i < train.number(); i++) {
        places.add(mark + i * train.spacing());
      }
    }
    for (double at : places) {
      List<Acting> forces = new ArrayList<>();
      for (SegmentLoad one : load.placed(train.path(), at)) {
        forces.add(LoadForces.resultant(train.name() + " on " + one.segment().name(), one));
      }
      floorLoads.add(new Alternative(train.name() + " at " + Math.round(at) + " mm", forces));
    }
  }

  private void addRailLoads() {
    for (RailSense sense : RailSense.of(structure.rules().railDirections())) {
      structure.rules().find(RuleSet.GUARDRAIL_LINE).ifPresent(line -> addRailLines(line, sense));
      addRailPoints(RuleSet.GUARDRAIL_POINT, RailKind.TOP, sense);
      addRailPoints(RuleSet.MIDRAIL_POINT, RailKind.MIDDLE, sense);
    }
  }

  /** People lean on all rails of a side at a time, but not on those of two sides. */
  private void addRailLines(Figure line, RailSense sense) {
    for (List<Rail> side : sides()) {
      List<Acting> forces = new ArrayList<>();
      for (Rail rail : side) {
        for (Segment segment : segments(rail)) {
          forces.add(
              new PlacedForce(
                  line.words() + " " + sense.words() + ": " + segment.name(),
                  sense.direction(rail, segment).times(line.value() * segment.length()),
                  segment.from().plus(segment.to()).times(0.5)));
        }
      }
      String names = String.join(", ", side.stream().map(Rail::name).toList());
      railLoads.add(new Alternative(line.words() + " " + sense.words() + ": " + names, forces));
    }
  }

  private List<List<Rail>> sides() {
    List<List<Rail>> sides = new ArrayList<>();
    for (Rail rail : rails(RailKind.TOP)) {
      sides.stream()
          .filter(side -> side.get(0).outward().dot(rail.outward()) > ONE_SIDE)
          .findFirst()
          .ifPresentOrElse(side -> side.add(rail), () -> sides.add(new ArrayList<>(List.of(rail))));
    }
    return sides;
  }

  private void addRailPoints(String figureId, RailKind kind, RailSense sense) {
    Optional<Figure> figure = structure.rules().find(figureId);
    if (figure.isEmpty()) {
      return;
    }
    for (Rail rail : rails(kind)) {
      for (Segment segment : segments(rail)) {
        Vector force = sense.direction(rail, segment).times(figure.get().value());
        for (boolean start : new boolean[] {true, false}) {
          String words =
              figure.get().words()
                  + " "
                  + sense.words()
                  + ": "
                  + segment.name()
                  + (start ? " start" : " end");
          railLoads.add(
              new Alternative(
                  words,
                  List.of(new PlacedForce(words, force, start ? segment.from() : segment.to()))));
        }
      }
    }
  }

  private List<Rail> rails(RailKind kind) {
    return structure.rails().stream().filter(r -> r.kind() == kind).toList();
  }

  private List<Segment> segments(Rail rail) {
    List<Segment> segments = new ArrayList<>();
    rail.members().forEach(m -> segments.addAll(structure.frame().segmentsOf(m)));
    return segments;
  }
}
