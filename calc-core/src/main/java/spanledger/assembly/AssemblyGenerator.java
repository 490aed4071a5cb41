package spanledger.assembly;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import spanledger.assembly.PlatformDraft.Station;
import spanledger.frame.MemberRole;

/** Makes the frame of an assembly; the same assembly always gives the same frame. */
public final class AssemblyGenerator {

  private final Assembly assembly;
  private final Problems problems = new Problems();
  private final Draft draft;
  private final Map<String, PlatformDraft> platforms = new LinkedHashMap<>();

  private AssemblyGenerator(Assembly assembly) {
    this.assembly = assembly;
    this.draft = new Draft(new PostTops(assembly.platforms()));
  }

  /** The frame of an assembly, or all reasons why it makes none. */
  public static Generation generate(Assembly assembly) {
    return new AssemblyGenerator(assembly).run();
  }

  private Generation run() {
    checkNames();
    List<Flight> lines = new ArrayList<>();
    StairChecks stairChecks = new StairChecks(assembly);
    for (Stair stair : assembly.stairs()) {
      stairChecks.line(stair, problems.at("stairs", stair.name())).ifPresent(lines::add);
    }
    Map<String, List<RailPlan>> plans = new LinkedHashMap<>();
    for (Platform platform : assembly.platforms()) {
      Problems.At at = problems.at("platforms", platform.name());
      int before = problems.count();
      new PlatformChecks(platform, at).run();
      if (problems.count() == before) {
        platform
            .guardrail()
            .ifPresent(
                rail ->
                    plans.put(
                        platform.name(),
                        new RailPlanner(platform, rail, openings(platform, lines), at).plans()));
      }
    }
    lines.forEach(line -> checkHeads(line, problems.at("stairs", line.stair().name())));
    if (!problems.isEmpty()) {
      return new Generation(Optional.empty(), problems.all());
    }
    for (Platform platform : assembly.platforms()) {
      make(platform, plans.getOrDefault(platform.name(), List.of()));
    }
    for (Flight line : lines) {
      make(line);
    }
    new Collisions(draft, problems).report(assembly);
    checkWithout();
    checkInsets();
    return problems.isEmpty()
        ? new Generation(Optional.of(draft.finish(assembly.without())), List.of())
        : new Generation(Optional.empty(), problems.all());
  }

  /** A piece whose joints would meet between two nodes has no length left there. */
  private void checkInsets() {
    Set<Part> told = new HashSet<>();
    for (DraftMember member : draft.members()) {
      Part part = member.part();
      if (part.inset() > 0
          && member.leftByInsets() <= Draft.SAME_PLACE
          && !assembly.without().contains(member.name())
          && told.add(part)) {
        problems
            .at("parts", part.name())
            .at("inset")
            .add(
                Problems.mm(part.inset()) + ", which leaves no length of " + member.name(),
                "an inset shorter than what lies between the nodes at its ends",
                "shorten it, or make a part of its own for that piece");
      }
    }
  }

  private void checkNames() {
    Set<String> names = new HashSet<>();
    assembly.platforms().forEach(platform -> names.add(platform.name()));
    for (Stair stair : assembly.stairs()) {
      if (!names.add(stair.name())) {
        problems
            .at("stairs", stair.name())
            .add(
                "the name of a platform once more",
                "names that differ among platforms and stairs",
                "choose another name");
      }
    }
  }

  /** What stairs ask of the floors that they join on to. */
  private static void checkHeads(Flight line, Problems.At at) {
    checkEnd(line, line.upper(), line.stair().side(), at.at("to"));
    line.lower()
        .ifPresent(lower -> checkEnd(line, lower, line.stair().side().opposite(), at.at("from")));
  }

  private static void checkEnd(Flight line, Platform platform, Side side, Problems.At at) {
    if (!side.isLong() && platform.bearers().fromEnds() > 0 && platform.endBeams().isEmpty()) {
      at.add(
          "the " + side.words() + " side of " + platform.name() + ", where no floor member lies",
          "a bearer or an end beam for the stringers",
          "add \"endBeams\" to "
              + platform.name()
              + ", or put its first bearer at 0 mm from the ends");
    }
    double rails = line.stair().rails().map(Stair.StairRails::height).orElse(0.0);
    double own = platform.guardrail().map(Guardrail::height).orElse(Double.POSITIVE_INFINITY);
    if (rails > own) {
      at.add(
          "a stair rail at "
              + Problems.mm(rails)
              + " over the nosings, held by posts of "
              + Problems.mm(own)
              + " over the floor of "
              + platform.name(),
          "a stair rail at most " + Problems.mm(own) + " high",
          "lower the rail of the stair, or raise that of the platform");
    }
  }

  private static Map<Side, List<RailGap>> openings(Platform platform, List<Flight> lines) {
    Map<Side, List<RailGap>> openings = new EnumMap<>(Side.class);
    for (Flight line : lines) {
      Stair stair = line.stair();
      if (stair.to().equals(platform.name())) {
        openings
            .computeIfAbsent(stair.side(), s -> new ArrayList<>())
            .add(opening(stair, stair.offset()));
      }
      if (stair.from().filter(platform.name()::equals).isPresent()) {
        double from = Math.min(line.alongLower(platform, true), line.alongLower(platform, false));
        openings
            .computeIfAbsent(stair.side().opposite(), s -> new ArrayList<>())
            .add(opening(stair, from));
      }
    }
    return openings;
  }

  private static RailGap opening(Stair stair, double from) {
    return new RailGap(from, from + stair.width(), false, "stair " + stair.name());
  }

  private void make(Platform platform, List<RailPlan> plans) {
    PlatformDraft made = new PlatformDraft(platform, draft);
    platforms.put(platform.name(), made);
    new FloorGenerator(made, problems.at("platforms", platform.name())).generate();
    for (RailPlan plan : plans) {
      Guardrail guardrail = platform.guardrail().orElseThrow();
      addStations(made, plan.side());
      GuardrailGenerator generator =
          new GuardrailGenerator(made, guardrail, plan.side(), plan.gaps());
      generator.makePosts(plan.posts());
      generator.generate();
    }
    new BraceGenerator(made).generate();
  }

  /** The posts of the platform that hold the guardrail of a side. */
  private static void addStations(PlatformDraft made, Side side) {
    Platform platform = made.platform();
    List<Double> lines = platform.lines();
    if (side.isLong()) {
      for (int i = 0; i < lines.size(); i++) {
        addStation(made, side, lines.get(i), side, i);
      }
    } else {
      int line = side == Side.WEST ? 0 : platform.bays().size();
      addStation(made, side, 0, Side.SOUTH, line);
      addStation(made, side, platform.width(), Side.NORTH, line);
    }
  }

  private static void addStation(PlatformDraft made, Side side, double at, Side ofPost, int line) {
    // Posts of a side are all railed if one is, except where only its corners belong to other
    // sides.
    String label = ofPost.words() + (line + 1);
    made.railPost(ofPost, label)
        .ifPresent(post -> made.stations(side).put(at, new Station(at, label, post)));
  }

  private void make(Flight line) {
    PlatformDraft upper = Optional.ofNullable(platforms.get(line.upper().name())).orElseThrow();
    Optional<PlatformDraft> lower =
        line.lower().flatMap(platform -> Optional.ofNullable(platforms.get(platform.name())));
    draft.flight(line);
    new StairGenerator(line, draft, upper, lower).generate();
  }

  private void checkWithout() {
    Map<String, DraftMember> made = new LinkedHashMap<>();
    draft.members().forEach(member -> made.put(member.name(), member));
    for (String name : new TreeSet<>(assembly.without())) {
      DraftMember member = made.get(name);
      if (member == null || member.role() != MemberRole.BRACE) {
        problems
            .at("without", name)
            .add(
                member == null ? "no member of this name" : "a " + member.role().words(),
                "the name of a generated brace or tie",
                "correct the name; \"spanledger check --show-frame\" writes all names");
      }
    }
  }
}
