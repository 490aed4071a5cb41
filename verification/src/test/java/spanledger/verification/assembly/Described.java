package spanledger.verification.assembly;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spanledger.assembly.Assembly;
import spanledger.assembly.AssemblyGenerator;
import spanledger.assembly.Bracing;
import spanledger.assembly.CrossBearers;
import spanledger.assembly.CrossBraces;
import spanledger.assembly.Deck;
import spanledger.assembly.EdgeBeams;
import spanledger.assembly.Generation;
import spanledger.assembly.Guardrail;
import spanledger.assembly.KneeBraces;
import spanledger.assembly.Part;
import spanledger.assembly.PlanBraces;
import spanledger.assembly.Platform;
import spanledger.assembly.PlatformSite;
import spanledger.assembly.Posts;
import spanledger.assembly.Side;
import spanledger.assembly.Stair;
import spanledger.assembly.StairSite;
import spanledger.assembly.Ties;
import spanledger.frame.MemberEnd;
import spanledger.frame.Restraint;
import spanledger.frame.Vector;
import spanledger.material.Alloy;
import spanledger.material.ProductForm;
import spanledger.section.RectangularHollow;
import spanledger.section.Section;
import spanledger.tables.AlloyTables;

/** Descriptions for tests; every piece is one rigidly joined tube, invented. */
final class Described {

  static final List<Restraint> PINNED =
      List.of(
          Restraint.FIXED,
          Restraint.FIXED,
          Restraint.FIXED,
          Restraint.FREE,
          Restraint.FREE,
          Restraint.FREE);

  private static final Alloy ALLOY =
      AlloyTables.standard().select("6082-T6", ProductForm.HOLLOW_PROFILE, 4, 4);

  static final Part PART =
      new Part(
          "tube",
          new Section("tube", new RectangularHollow(60, 60, 4, 4)),
          "main",
          ALLOY,
          0,
          MemberEnd.RIGID);

  static final Set<Side> ALL_SIDES = Set.of(Side.values());

  private Described() {}

  /** A platform of equal bays with ties at 300 mm and a guardrail of 1000 and 500 mm. */
  static Platform platform(double length, double width, double height, int bays) {
    return new Platform(
        "floor1",
        Vector.ZERO,
        length,
        width,
        height,
        Collections.nCopies(bays, length / bays),
        new Posts(PART, true, PINNED, Map.of()),
        new EdgeBeams(PART, 1),
        Optional.empty(),
        new CrossBearers(PART, 600, 0),
        new Deck(1e-4, 1, Optional.empty(), Optional.empty()),
        new Bracing(
            Optional.of(new Ties(PART, 300, Set.of(Side.NORTH, Side.SOUTH))),
            Optional.empty(),
            Optional.empty(),
            Optional.empty()),
        Optional.of(guardrail(List.of())),
        PlatformSite.UNKNOWN);
  }

  static Guardrail guardrail(List<Guardrail.Gate> gates) {
    return new Guardrail(
        1000,
        PART,
        List.of(new Guardrail.MiddleRail(PART, 500)),
        Optional.of(new Guardrail.ToeBoard(PART, 150, 0)),
        ALL_SIDES,
        Optional.of(PART),
        Double.POSITIVE_INFINITY,
        List.of(),
        gates);
  }

  static Platform with(Platform p, Guardrail guardrail) {
    return PlatformVariant.of(p).with(guardrail).platform();
  }

  static Platform with(Platform p, CrossBearers bearers, Bracing bracing) {
    return PlatformVariant.of(p).with(bearers).with(bracing).platform();
  }

  static Platform named(Platform p, String name, Vector corner) {
    return PlatformVariant.of(p).named(name, corner).platform();
  }

  static Bracing bracing(
      Optional<CrossBraces> crosses, Optional<KneeBraces> knees, Optional<PlanBraces> plan) {
    return new Bracing(Optional.empty(), crosses, knees, plan);
  }

  /** A stair from the ground to floor1. */
  static Stair stair(Side side, double offset, double width, int rises, double going) {
    return new Stair(
        "stair1",
        "floor1",
        side,
        offset,
        Optional.empty(),
        0,
        width,
        rises,
        Optional.of(going),
        Optional.empty(),
        PART,
        PART,
        Optional.empty(),
        PINNED,
        Optional.of(
            new Stair.StairRails(
                900, PART, List.of(new Guardrail.MiddleRail(PART, 450)), PART, 1200)),
        StairSite.UNKNOWN);
  }

  static Generation generate(Platform... platforms) {
    return AssemblyGenerator.generate(
        new Assembly(List.of(platforms), List.of(), Set.of(), Optional.empty()));
  }

  static Generation generate(Platform platform, Stair stair) {
    return AssemblyGenerator.generate(
        new Assembly(List.of(platform), List.of(stair), Set.of(), Optional.empty()));
  }
}
