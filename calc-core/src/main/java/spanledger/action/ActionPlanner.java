package spanledger.action;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.MemberRole;
import spanledger.frame.Vector;

/**
 * Works out every load case, moving load and combination of a job.
 *
 * <p>Imposed area load is a free action: each bay of each floor is loaded or not, whichever is
 * worse, and so is each imposed case that the user gives; point loads, line loads and trains on
 * floors act apart from it. Guardrail loads act one at a time, wind cases likewise, beside any bays
 * where the combination rule has imposed loads. Notional sway acts both ways along X and Y with
 * permanent and area loads, or, if the job asks for it, with all of them.
 */
public final class ActionPlanner {

  private static final Map<String, Vector> LEVEL =
      Map.of("X", new Vector(1, 0, 0), "Y", new Vector(0, 1, 0));

  private final RuleSet rules;
  private final CombinationSet combinationSet;
  private final SwayScope scope;
  private final List<Surface> surfaces;
  private final List<Rail> topRails;
  private final List<Rail> middleRails;
  private final Frame frame;
  private final CaseBuilder builder;
  private final List<CategorisedCase> permanent = new ArrayList<>();
  private final List<CategorisedCase> area = new ArrayList<>();
  private final List<CategorisedCase> floorLines = new ArrayList<>();
  private final List<CategorisedCase> railLines = new ArrayList<>();
  private final List<CategorisedCase> userImposed = new ArrayList<>();
  private final List<CategorisedCase> wind = new ArrayList<>();
  private final Map<String, Map<CategorisedCase, CategorisedCase>> sway = new LinkedHashMap<>();
  private final List<MovingLoad> floorPoints = new ArrayList<>();
  private final List<MovingLoad> railPoints = new ArrayList<>();
  private final Map<String, List<MovingLoad>> swayed = new LinkedHashMap<>();

  private ActionPlanner(
      Frame frame,
      List<Surface> surfaces,
      List<Rail> rails,
      RuleSet rules,
      CombinationSet combinationSet,
      SwayScope scope) {
    this.frame = frame;
    this.scope = scope;
    this.rules = rules;
    this.combinationSet = combinationSet;
    this.surfaces = surfaces;
    this.topRails = rails.stream().filter(r -> r.kind() == RailKind.TOP).toList();
    this.middleRails = rails.stream().filter(r -> r.kind() == RailKind.MIDDLE).toList();
    this.builder = new CaseBuilder(frame, rules);
  }

  /**
   * Plans the actions.
   *
   * @throws IllegalArgumentException if a floor cannot be shared out to its members or the rule set
   *     lacks a figure
   */
  public static Actions plan(
      Frame frame,
      List<Surface> surfaces,
      List<Rail> rails,
      List<UserCase> userCases,
      RuleSet rules,
      CombinationSet combinationSet) {
    return plan(frame, surfaces, rails, userCases, List.of(), rules, combinationSet);
  }

  /**
   * Plans the actions of a job with trains.
   *
   * @throws IllegalArgumentException if a floor cannot be shared out to its members or the rule set
   *     lacks a figure
   */
  public static Actions plan(
      Frame frame,
      List<Surface> surfaces,
      List<Rail> rails,
      List<UserCase> userCases,
      List<LoadTrain> trains,
      RuleSet rules,
      CombinationSet combinationSet) {
    return plan(
        frame, surfaces, rails, userCases, trains, rules, combinationSet, SwayScope.VERTICAL);
  }

  /**
   * Plans the actions of a job with trains.
   *
   * @param scope with which combinations notional sway acts
   * @throws IllegalArgumentException if a floor cannot be shared out to its members or the rule set
   *     lacks a figure
   */
  public static Actions plan(
      Frame frame,
      List<Surface> surfaces,
      List<Rail> rails,
      List<UserCase> userCases,
      List<LoadTrain> trains,
      RuleSet rules,
      CombinationSet combinationSet,
      SwayScope scope) {
    ActionPlanner planner = new ActionPlanner(frame, surfaces, rails, rules, combinationSet, scope);
    planner.makeCases(userCases);
    trains.forEach(train -> planner.floorPoints.add(planner.builder.train(train)));
    return planner.combine();
  }

  private void makeCases(List<UserCase> userCases) {
    permanent.add(builder.selfWeight());
    for (Surface surface : surfaces) {
      if (surface.finishes() > 0) {
        permanent.add(builder.finishes(surface));
      }
      area.addAll(builder.imposedArea(surface));
    }
    for (UserCase user : userCases) {
      CategorisedCase made = new CategorisedCase(user.loads(), user.category(), "Given in the job");
      switch (user.category()) {
        case PERMANENT -> permanent.add(made);
        case WIND -> wind.add(made);
        default -> userImposed.add(made);
      }
    }
    makeFloorLoads();
    makeRailLoads();
    LEVEL.keySet().stream().sorted().forEach(this::makeSway);
  }

  private void makeFloorLoads() {
    boolean anyFloor = frame.members().stream().anyMatch(m -> m.role() == MemberRole.FLOOR);
    if (anyFloor && rules.find(RuleSet.FLOOR_POINT).isPresent()) {
      floorPoints.add(builder.floorPoint());
    }
    Optional<Figure> line = rules.find(RuleSet.FLOOR_LINE);
    if (line.isPresent()) {
      for (Member member : frame.members()) {
        if (member.role() == MemberRole.FLOOR) {
          floorLines.add(builder.imposedLine(member, line.get()));
        }
      }
    }
  }

  private void makeRailLoads() {
    for (RailSense sense : RailSense.of(rules.railDirections())) {
      for (Rail rail : topRails) {
        if (rules.find(RuleSet.GUARDRAIL_LINE).isPresent()) {
          railLines.add(builder.railLine(rail, sense));
        }
      }
      addRailPoint("top rail point", RuleSet.GUARDRAIL_POINT, topRails, sense);
      addRailPoint("middle rail point", RuleSet.MIDRAIL_POINT, middleRails, sense);
    }
  }

  private void addRailPoint(String name, String figureId, List<Rail> rails, RailSense sense) {
    Optional<Figure> figure = rules.find(figureId);
    if (figure.isPresent() && !rails.isEmpty()) {
      railPoints.add(builder.railPoint(name, figure.get(), rails, sense));
    }
  }

  private void makeSway(String axis) {
    if (rules.find(RuleSet.NOTIONAL_SWAY).isEmpty()) {
      return;
    }
    Map<CategorisedCase, CategorisedCase> along = new LinkedHashMap<>();
    List<CategorisedCase> vertical = new ArrayList<>(permanent);
    vertical.addAll(area);
    vertical.addAll(userImposed);
    if (scope == SwayScope.EVERY) {
      vertical.addAll(floorLines);
      vertical.addAll(railLines);
      vertical.addAll(wind);
    }
    for (CategorisedCase one : vertical) {
      Vector level = LEVEL.getOrDefault(axis, Vector.ZERO);
      CategorisedCase turned = builder.notional(one, level, axis);
      if (scope == SwayScope.VERTICAL || !isEmpty(turned.loads())) {
        along.put(one, turned);
      }
    }
    sway.put(axis, along);
  }

  private static boolean isEmpty(LoadCase loads) {
    return loads.segmentLoads().isEmpty() && loads.nodalLoads().isEmpty();
  }

  /** A way in which the frame is out of plumb. */
  private record Way(String axis, int sign) {
    String words() {
      return "sway " + (sign > 0 ? "+" : "-") + axis;
    }
  }

  private List<Way> ways() {
    List<Way> ways = new ArrayList<>();
    for (String axis : sway.keySet()) {
      ways.add(new Way(axis, 1));
      ways.add(new Way(axis, -1));
    }
    return ways;
  }

  /** A load with what sways along with it, way by way; empty if nothing weighs down in it. */
  private List<MovingLoad> swayed(MovingLoad load) {
    List<MovingLoad> each = new ArrayList<>();
    for (Way way : ways()) {
      Vector level = LEVEL.getOrDefault(way.axis(), Vector.ZERO).times(way.sign());
      double fraction = rules.figure(RuleSet.NOTIONAL_SWAY).value();
      load.swayed(way.words(), new NotionalSway(level, fraction)).ifPresent(each::add);
    }
    return each;
  }

  private Actions combine() {
    List<CategorisedCase> cases = new ArrayList<>(permanent);
    cases.addAll(area);
    cases.addAll(userImposed);
    cases.addAll(wind);
    cases.addAll(floorLines);
    cases.addAll(railLines);
    sway.values().forEach(along -> cases.addAll(along.values()));
    List<MovingLoad> moving = new ArrayList<>(floorPoints);
    moving.addAll(railPoints);
    if (scope == SwayScope.EVERY) {
      moving.forEach(load -> swayed.put(load.name(), swayed(load)));
    }
    List<Combination> combinations = new ArrayList<>();
    swayed.values().forEach(moving::addAll);
    for (CombinationTemplate template : combinationSet.templates()) {
      new TemplateExpansion(template, combinations).expand();
    }
    return new Actions(cases, moving, Combination.withoutCovered(combinations));
  }

  /** Spreads one template over places, directions and sway. */
  private final class TemplateExpansion {
    private final CombinationTemplate template;
    private final List<Combination> into;

    TemplateExpansion(CombinationTemplate template, List<Combination> into) {
      this.template = template;
      this.into = into;
    }

    void expand() {
      switch (template.leading()) {
        case NONE -> withSway(false);
        case FLOOR -> floor();
        case GUARDRAIL -> guardrail();
        case WIND -> wind.forEach(one -> leading(one, true));
      }
    }

    private void floor() {
      if (!area.isEmpty() || !userImposed.isEmpty()) {
        withSway(true);
      }
      for (CategorisedCase line : floorLines) {
        leading(line, false);
      }
      for (MovingLoad load : floorPoints) {
        moving(load, false, ActionCategory.IMPOSED);
      }
    }

    private void guardrail() {
      railLines.forEach(line -> leading(line, true));
      for (MovingLoad load : railPoints) {
        moving(load, true, ActionCategory.GUARDRAIL);
      }
    }

    /** Whether the frame is out of plumb beside a load that leads. */
    private boolean swaysBeside() {
      return scope == SwayScope.EVERY
          && !sway.isEmpty()
          && template.limitState() != LimitState.SERVICEABILITY;
    }

    /** One case that leads, perhaps beside whatever imposed loads the rule allows. */
    private void leading(CategorisedCase one, boolean imposed) {
      if (!swaysBeside()) {
        add(
            one.loads().name(),
            terms(with(one)),
            imposed ? options(Optional.empty(), 1) : List.of(),
            Optional.empty());
        return;
      }
      for (Way way : ways()) {
        List<Combination.Term> terms = terms(with(one));
        with(one).forEach(c -> addSway(terms, c, way.axis(), way.sign()));
        add(
            one.loads().name() + ", " + way.words(),
            terms,
            imposed ? options(Optional.of(way.axis()), way.sign()) : List.of(),
            Optional.empty());
      }
    }

    private List<CategorisedCase> with(CategorisedCase one) {
      List<CategorisedCase> acting = new ArrayList<>(permanent);
      acting.add(one);
      return acting;
    }

    private void moving(MovingLoad load, boolean imposed, ActionCategory category) {
      if (!swaysBeside()) {
        add(
            load.name(),
            terms(permanent),
            imposed ? options(Optional.empty(), 1) : List.of(),
            Optional.of(new Combination.MovingTerm(load, category, 1)));
        return;
      }
      List<MovingLoad> own = swayed.getOrDefault(load.name(), List.of());
      List<Way> ways = ways();
      for (int i = 0; i < ways.size(); i++) {
        Way way = ways.get(i);
        List<Combination.Term> terms = terms(permanent);
        permanent.forEach(one -> addSway(terms, one, way.axis(), way.sign()));
        MovingLoad moves = own.isEmpty() ? load : own.get(i);
        add(
            load.name() + ", " + way.words(),
            terms,
            imposed ? options(Optional.of(way.axis()), way.sign()) : List.of(),
            Optional.of(new Combination.MovingTerm(moves, category, 1)));
      }
    }

    private void withSway(boolean imposed) {
      if (!template.withNotionalSway() || sway.isEmpty()) {
        add(
            "",
            terms(permanent),
            imposed ? options(Optional.empty(), 1) : List.of(),
            Optional.empty());
        return;
      }
      for (String axis : sway.keySet()) {
        for (int sign : new int[] {1, -1}) {
          List<Combination.Term> terms = terms(permanent);
          permanent.forEach(one -> addSway(terms, one, axis, sign));
          add(
              "sway " + (sign > 0 ? "+" : "-") + axis,
              terms,
              imposed ? options(Optional.of(axis), sign) : List.of(),
              Optional.empty());
        }
      }
    }

    private void addSway(List<Combination.Term> terms, CategorisedCase one, String axis, int sign) {
      CategorisedCase level = sway.getOrDefault(axis, Map.of()).get(one);
      if (level != null && !isEmpty(level.loads()) && template.factor(one.category()) != 0) {
        terms.add(new Combination.Term(level.loads(), one.category(), sign));
      }
    }

    /** Every bay and every imposed case of the user, with its sway if an axis is given. */
    private List<Combination.Option> options(Optional<String> axis, int sign) {
      List<CategorisedCase> free = new ArrayList<>(area);
      free.addAll(userImposed);
      List<Combination.Option> options = new ArrayList<>();
      for (CategorisedCase one : free) {
        List<Combination.Term> terms = terms(List.of(one));
        axis.ifPresent(a -> addSway(terms, one, a, sign));
        if (!terms.isEmpty()) {
          String name = one.loads().name();
          String words = area.contains(one) ? name.substring(CaseBuilder.AREA.length()) : name;
          options.add(new Combination.Option(words, terms));
        }
      }
      return options;
    }

    private List<Combination.Term> terms(List<CategorisedCase> acting) {
      List<Combination.Term> terms = new ArrayList<>();
      for (CategorisedCase one : acting) {
        if (template.factor(one.category()) != 0) {
          terms.add(new Combination.Term(one.loads(), one.category(), 1));
        }
      }
      return terms;
    }

    private void add(
        String words,
        List<Combination.Term> terms,
        List<Combination.Option> options,
        Optional<Combination.MovingTerm> moving) {
      String name = words.isEmpty() ? template.name() : template.name() + ": " + words;
      into.add(new Combination(name, template, terms, options, moving));
    }
  }
}
