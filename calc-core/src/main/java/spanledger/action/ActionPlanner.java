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
 * <p>Imposed area load acts on all floors, on each alone, and on each two neighbours (in job
 * order); point and line loads on floors act apart from it. Guardrail loads act one at a time, with
 * the floors loaded where the combination rule says so. Imposed loads given by the user act
 * together with the area load. Notional sway acts both ways along X and Y with permanent and area
 * loads.
 */
public final class ActionPlanner {

  private static final Map<String, Vector> LEVEL =
      Map.of("X", new Vector(1, 0, 0), "Y", new Vector(0, 1, 0));

  private final RuleSet rules;
  private final CombinationSet combinationSet;
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

  private ActionPlanner(
      Frame frame,
      List<Surface> surfaces,
      List<Rail> rails,
      RuleSet rules,
      CombinationSet combinationSet) {
    this.frame = frame;
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
    ActionPlanner planner = new ActionPlanner(frame, surfaces, rails, rules, combinationSet);
    planner.makeCases(userCases);
    return planner.combine();
  }

  private void makeCases(List<UserCase> userCases) {
    permanent.add(builder.selfWeight());
    for (Surface surface : surfaces) {
      if (surface.finishes() > 0) {
        permanent.add(builder.finishes(surface));
      }
      area.add(builder.imposedArea(surface));
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
    for (RailDirection direction : rules.railDirections()) {
      for (Rail rail : topRails) {
        if (rules.find(RuleSet.GUARDRAIL_LINE).isPresent()) {
          railLines.add(builder.railLine(rail, direction));
        }
      }
      addRailPoint("top rail point", RuleSet.GUARDRAIL_POINT, topRails, direction);
      addRailPoint("middle rail point", RuleSet.MIDRAIL_POINT, middleRails, direction);
    }
  }

  private void addRailPoint(
      String name, String figureId, List<Rail> rails, RailDirection direction) {
    Optional<Figure> figure = rules.find(figureId);
    if (figure.isPresent() && !rails.isEmpty()) {
      railPoints.add(builder.railPoint(name, figure.get(), rails, direction));
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
    for (CategorisedCase one : vertical) {
      Vector level = LEVEL.getOrDefault(axis, Vector.ZERO);
      along.put(one, builder.notional(one, level, axis));
    }
    sway.put(axis, along);
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
    List<Combination> combinations = new ArrayList<>();
    for (CombinationTemplate template : combinationSet.templates()) {
      new TemplateExpansion(template, combinations).expand();
    }
    return new Actions(cases, moving, combinations);
  }

  /** The floor cases that act together, with words for the pattern. */
  private record Pattern(String words, List<CategorisedCase> cases) {}

  private List<Pattern> patterns() {
    List<Pattern> patterns = new ArrayList<>();
    if (area.isEmpty() && userImposed.isEmpty()) {
      return patterns;
    }
    patterns.add(pattern(area.size() > 1 ? "all floors" : "floor", area));
    if (area.size() > 1) {
      for (int i = 0; i < area.size(); i++) {
        patterns.add(pattern(surfaces.get(i).name() + " alone", area.subList(i, i + 1)));
      }
      for (int i = 0; area.size() > 2 && i + 1 < area.size(); i++) {
        patterns.add(
            pattern(
                surfaces.get(i).name() + " and " + surfaces.get(i + 1).name(),
                area.subList(i, i + 2)));
      }
    }
    return patterns;
  }

  private Pattern pattern(String words, List<CategorisedCase> floors) {
    List<CategorisedCase> all = new ArrayList<>(floors);
    all.addAll(userImposed);
    return new Pattern(words, all);
  }

  /** Spreads one template over patterns, places and directions. */
  private final class TemplateExpansion {
    private final CombinationTemplate template;
    private final List<Combination> into;

    TemplateExpansion(CombinationTemplate template, List<Combination> into) {
      this.template = template;
      this.into = into;
    }

    void expand() {
      switch (template.leading()) {
        case NONE -> withSway("", permanent);
        case FLOOR -> floor();
        case GUARDRAIL -> guardrail();
        case WIND ->
            wind.forEach(
                one -> {
                  List<CategorisedCase> acting = accompanied();
                  acting.add(one);
                  add(one.loads().name(), terms(acting), Optional.empty());
                });
      }
    }

    private void floor() {
      for (Pattern pattern : patterns()) {
        List<CategorisedCase> acting = new ArrayList<>(permanent);
        acting.addAll(pattern.cases());
        withSway(pattern.words(), acting);
      }
      for (CategorisedCase line : floorLines) {
        List<CategorisedCase> acting = new ArrayList<>(permanent);
        acting.add(line);
        add(line.loads().name(), terms(acting), Optional.empty());
      }
      for (MovingLoad load : floorPoints) {
        moving(load, permanent, ActionCategory.IMPOSED);
      }
    }

    private void guardrail() {
      for (CategorisedCase line : railLines) {
        List<CategorisedCase> acting = accompanied();
        acting.add(line);
        add(line.loads().name(), terms(acting), Optional.empty());
      }
      for (MovingLoad load : railPoints) {
        moving(load, accompanied(), ActionCategory.GUARDRAIL);
      }
    }

    private List<CategorisedCase> accompanied() {
      List<CategorisedCase> acting = new ArrayList<>(permanent);
      if (template.factor(ActionCategory.IMPOSED) != 0) {
        acting.addAll(area);
        acting.addAll(userImposed);
      }
      return acting;
    }

    private void moving(MovingLoad load, List<CategorisedCase> acting, ActionCategory category) {
      add(load.name(), terms(acting), Optional.of(new Combination.MovingTerm(load, category, 1)));
    }

    private void withSway(String words, List<CategorisedCase> acting) {
      if (!template.withNotionalSway() || sway.isEmpty()) {
        add(words, terms(acting), Optional.empty());
        return;
      }
      for (Map.Entry<String, Map<CategorisedCase, CategorisedCase>> along : sway.entrySet()) {
        for (int sign : new int[] {1, -1}) {
          List<Combination.Term> terms = terms(acting);
          for (CategorisedCase one : acting) {
            CategorisedCase level = along.getValue().get(one);
            if (level != null && !isEmpty(level.loads())) {
              terms.add(new Combination.Term(level.loads(), one.category(), sign));
            }
          }
          String way = "sway " + (sign > 0 ? "+" : "-") + along.getKey();
          add(words.isEmpty() ? way : words + ", " + way, terms, Optional.empty());
        }
      }
    }

    private boolean isEmpty(LoadCase loads) {
      return loads.segmentLoads().isEmpty() && loads.nodalLoads().isEmpty();
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
        String words, List<Combination.Term> terms, Optional<Combination.MovingTerm> moving) {
      String name = words.isEmpty() ? template.name() : template.name() + ": " + words;
      into.add(new Combination(name, template, terms, moving));
    }
  }
}
