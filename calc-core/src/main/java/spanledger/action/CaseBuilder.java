package spanledger.action;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.MemberRole;
import spanledger.frame.Segment;
import spanledger.frame.Vector;

/** Makes the load cases of a job from its floors, rails and rule set. */
final class CaseBuilder {

  /** How the names of cases of area load begin; what follows says where. */
  static final String AREA = "area ";

  private final Frame frame;
  private final RuleSet rules;

  CaseBuilder(Frame frame, RuleSet rules) {
    this.frame = frame;
    this.rules = rules;
  }

  CategorisedCase selfWeight() {
    List<SegmentLoad> loads = new ArrayList<>();
    for (Segment segment : frame.segments()) {
      double weight =
          SelfWeight.perLength(
              segment.member().section().properties().area(), segment.member().alloy().density());
      loads.add(whole(segment, Vector.DOWN, new LoadOrigin.OwnWeight(), weight));
    }
    return permanent("self-weight", loads, "Weight of all members");
  }

  CategorisedCase finishes(Surface surface) {
    return permanent(
        "finishes " + surface.name(),
        areaLoads(surface, DeckShares.of(surface, frame), surface.finishes()),
        "Weight of deck and finishes on " + surface.name());
  }

  /** The imposed area load of a floor, one case for each part that may be loaded by itself. */
  List<CategorisedCase> imposedArea(Surface surface) {
    List<CategorisedCase> cases = new ArrayList<>();
    for (DeckShares.Bay bay : DeckShares.bays(surface, frame)) {
      String where = surface.name() + (bay.name().isEmpty() ? "" : " " + bay.name());
      cases.add(
          new CategorisedCase(
              new LoadCase(
                  AREA + where,
                  List.of(),
                  areaLoads(surface, bay.shares(), rules.figure(RuleSet.FLOOR_AREA).value())),
              ActionCategory.IMPOSED,
              "Imposed area load on " + where));
    }
    return cases;
  }

  private static List<SegmentLoad> areaLoads(
      Surface surface, List<DeckShares.Share> shares, double pressure) {
    List<SegmentLoad> loads = new ArrayList<>();
    for (DeckShares.Share share : shares) {
      double line = AreaLoadShare.lineLoad(pressure, share.width());
      loads.add(
          new SegmentLoad.Distributed(
              share.segment(),
              LoadAxes.GLOBAL,
              Vector.DOWN,
              new LoadOrigin.AreaShare(surface.name(), pressure, share.strip()),
              line,
              line,
              share.from(),
              share.to()));
      loads.addAll(
          LoadBeyondEnd.of(
              share.segment(),
              Vector.DOWN,
              new LoadOrigin.AreaShare(surface.name(), pressure, share.strip()),
              line,
              share.before(),
              share.after()));
    }
    return loads;
  }

  /** Imposed line load along one floor member. */
  CategorisedCase imposedLine(Member member, Figure figure) {
    List<SegmentLoad> loads = new ArrayList<>();
    for (Segment segment : frame.segmentsOf(member)) {
      loads.addAll(nodeToNode(segment, Vector.DOWN, figure));
    }
    return new CategorisedCase(
        new LoadCase("line " + member.name(), List.of(), loads),
        ActionCategory.IMPOSED,
        "Imposed line load along " + member.name());
  }

  CategorisedCase railLine(Rail rail, RailSense sense) {
    Figure figure = rules.figure(RuleSet.GUARDRAIL_LINE);
    List<SegmentLoad> loads = new ArrayList<>();
    for (Member member : rail.members()) {
      for (Segment segment : frame.segmentsOf(member)) {
        loads.addAll(nodeToNode(segment, sense.direction(rail, segment), figure));
      }
    }
    return new CategorisedCase(
        new LoadCase("rail line " + rail.name() + " " + sense.words(), List.of(), loads),
        ActionCategory.GUARDRAIL,
        "Line load on " + rail.name() + ", " + sense.words());
  }

  /**
   * The load at any one place of the floors. If the rule set says on which area it stands, it is
   * spread over the side of that area along the members; across them it is not, which is on the
   * safe side.
   */
  MovingLoad floorPoint() {
    Figure figure = rules.figure(RuleSet.FLOOR_POINT);
    List<Member> floors =
        frame.members().stream().filter(m -> m.role() == MemberRole.FLOOR).toList();
    Optional<Figure> patch = rules.find(RuleSet.FLOOR_POINT_PATCH);
    if (patch.isPresent()) {
      return new MovingLoad(
          "floor point",
          figure,
          new Footprint.Patch(patch.get().value()),
          new Chains(frame).straight(floors, Vector.DOWN));
    }
    List<LoadPath> paths = new ArrayList<>();
    for (Member member : floors) {
      frame.segmentsOf(member).forEach(s -> paths.add(LoadPath.of(s, Vector.DOWN)));
    }
    return new MovingLoad("floor point", figure, paths);
  }

  MovingLoad train(LoadTrain train) {
    return new MovingLoad(
        train.name(),
        train.force(),
        new Footprint.Train(train.number(), train.spacing()),
        List.of(train.path()));
  }

  MovingLoad railPoint(String name, Figure figure, List<Rail> rails, RailSense sense) {
    List<LoadPath> paths = new ArrayList<>();
    for (Rail rail : rails) {
      for (Member member : rail.members()) {
        for (Segment segment : frame.segmentsOf(member)) {
          paths.add(LoadPath.of(segment, sense.direction(rail, segment)));
        }
      }
    }
    return new MovingLoad(name + " " + sense.words(), figure, paths);
  }

  /**
   * The level forces that belong to a case's vertical loads. Loads given in a segment's own axes
   * bring none.
   *
   * @param level global direction of the forces, of length 1
   */
  CategorisedCase notional(CategorisedCase vertical, Vector level, String axis) {
    double fraction = rules.figure(RuleSet.NOTIONAL_SWAY).value();
    List<SegmentLoad> loads = new NotionalSway(level, fraction).of(vertical.loads().segmentLoads());
    List<NodalLoad> nodal = new ArrayList<>();
    for (NodalLoad load : vertical.loads().nodalLoads()) {
      if (load.force().z() != 0) {
        nodal.add(
            new NodalLoad(
                load.node(),
                level.times(-load.force().z() * fraction),
                Vector.ZERO,
                "notional sway of " + load.what()));
      }
    }
    return new CategorisedCase(
        new LoadCase("sway " + axis + " of " + vertical.loads().name(), nodal, loads),
        vertical.category(),
        "Notional level forces along " + axis + " for " + vertical.loads().name(),
        Optional.of(vertical.loads()));
  }

  private static CategorisedCase permanent(String name, List<SegmentLoad> loads, String words) {
    return new CategorisedCase(
        new LoadCase(name, List.of(), loads), ActionCategory.PERMANENT, words);
  }

  /** A line load from node to node, also where member ends stand back from their nodes. */
  private static List<SegmentLoad> nodeToNode(Segment segment, Vector direction, Figure figure) {
    LoadOrigin origin = new LoadOrigin.Given(figure.id());
    List<SegmentLoad> loads = new ArrayList<>();
    loads.add(whole(segment, direction, origin, figure.value()));
    loads.addAll(
        LoadBeyondEnd.of(
            segment,
            direction,
            origin,
            figure.value(),
            segment.standsBack(),
            segment.standsBackAtEnd()));
    return loads;
  }

  private static SegmentLoad whole(
      Segment segment, Vector direction, LoadOrigin origin, double intensity) {
    return new SegmentLoad.Distributed(
        segment, LoadAxes.GLOBAL, direction, origin, intensity, intensity, 0, segment.length());
  }
}
