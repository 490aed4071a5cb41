package spanledger.deck;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import spanledger.action.ActionCategory;
import spanledger.action.Figure;
import spanledger.material.BucklingClass;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Procedure;
import spanledger.provenance.Source;
import spanledger.resistance.ElasticStress;
import spanledger.resistance.ResistanceFactors;
import spanledger.resistance.StressUtilisation;
import spanledger.resistance.WallLimits;
import spanledger.resistance.WallSlenderness;

/** Checks planks by their section where they are used. */
final class PlankReview {

  private static final Source NONE = Source.declared("a plank has no such force");
  private static final Source NO_PATCH =
      Source.declared("the rule set states no patch: taken as a point, on the safe side");

  private final DeckLoads loads;
  private final ResistanceFactors factors;
  private final DeflectionCheck deflections;
  private final DeckUse use;
  private final PlankPanel plank;

  PlankReview(DeckLoads loads, ResistanceFactors factors, DeckUse use, PlankPanel plank) {
    this.loads = loads;
    this.factors = factors;
    this.deflections = new DeflectionCheck(loads);
    this.use = use;
    this.plank = plank;
  }

  List<DeckFinding> findings() {
    List<DeckFinding> findings = new ArrayList<>();
    for (DeckLoad load : DeckLoad.values()) {
      loads.load(use.kind(), load).ifPresent(figure -> check(load, figure, findings));
    }
    return findings;
  }

  private void check(DeckLoad load, Figure figure, List<DeckFinding> findings) {
    DeckCalculation bent = calculation(load, procedure(load), symbol -> plankInput(symbol, figure));
    DeckCalculation stress =
        calculation(load, ElasticStress.PROCEDURE, symbol -> stressInput(symbol, bent));
    DeckCalculation used =
        calculation(load, StressUtilisation.PROCEDURE, symbol -> useInput(symbol, stress));
    DeckCalculation wall =
        calculation(load, WallSlenderness.PROCEDURE, symbol -> wallInput(symbol, stress, used));
    Optional<String> doubt = doubt(wall);
    findings.add(
        new DeckFinding(
            use,
            load.words(),
            Optional.of(
                new DeckFinding.Result(
                    used,
                    Optional.of("σ_eq"),
                    Optional.of("f_d"),
                    "η_combined",
                    doubt.isEmpty(),
                    true)),
            doubt.orElse(use.where())));
    findings.add(
        new DeckFinding(
            use,
            "walls in compression under " + load.words(),
            Optional.of(
                new DeckFinding.Result(
                    wall, Optional.empty(), Optional.empty(), "η_wall", doubt.isEmpty(), false)),
            doubt.orElse(use.where())));
    findings.add(deflections.of(bent));
  }

  private Optional<String> doubt(DeckCalculation wall) {
    if (!plank.section().properties().platesKnown()) {
      return Optional.of(
          "the walls of section "
              + plank.section().name()
              + " are not known, so local buckling"
              + " cannot be ruled out");
    }
    double slender = wall.value("η_wall");
    return slender <= 1
        ? Optional.empty()
        : Optional.of(
            String.format(
                Locale.ROOT, "the walls are class 4 (%.2f of the limit); test the plank", slender));
  }

  private static Procedure procedure(DeckLoad load) {
    return switch (load) {
      case AREA -> PlankProcedures.AREA;
      case POINT -> PlankProcedures.POINT;
      case LINE -> PlankProcedures.LINE;
    };
  }

  private DeckCalculation calculation(
      DeckLoad load, Procedure procedure, DeckCalculation.Inputs inputs) {
    return DeckCalculation.of(use, load, procedure, inputs);
  }

  private DeckInput plankInput(String symbol, Figure load) {
    return switch (symbol) {
      case "L" -> new DeckInput.OfUse(use, UseSize.SPAN);
      case "b" -> new DeckInput.Given(plank.width(), Source.declared(plank.reference()));
      case "g" -> new DeckInput.OfUse(use, UseSize.WEIGHT);
      case "a" -> patch();
      case "E" -> new DeckInput.OfAlloy(plank.alloy(), symbol, plank.alloy().youngsModulus());
      case "G" -> new DeckInput.OfAlloy(plank.alloy(), symbol, plank.alloy().shearModulus());
      case "q_k", "P_k", "p_k" -> new DeckInput.OfFigure(load.id(), load.value());
      case "γ_G" -> factor(ActionCategory.PERMANENT, load);
      case "γ_Q" -> factor(ActionCategory.IMPOSED, load);
      default -> property(symbol);
    };
  }

  private DeckInput patch() {
    return loads
        .patch(use.kind())
        .<DeckInput>map(figure -> new DeckInput.OfFigure(figure.id(), figure.value()))
        .orElseGet(() -> new DeckInput.Given(0, NO_PATCH));
  }

  private DeckInput factor(ActionCategory category, Figure load) {
    return new DeckInput.OfCombination(loads.worst(use.finishes(), load.value()), category);
  }

  private DeckInput property(String symbol) {
    CompiledProcedure shape = plank.section().shape().compiled();
    double[] values = shape.run(plank.section().shape().inputs());
    return new DeckInput.OfSection(plank.section(), symbol, values[shape.slot(symbol)]);
  }

  private DeckInput stressInput(String symbol, DeckCalculation bent) {
    return switch (symbol) {
      case "N", "V_y", "T", "M_z" -> new DeckInput.Given(0, NONE);
      case "V_z" -> new DeckInput.OfStep(bent, "V");
      case "M_y" -> new DeckInput.OfStep(bent, "M");
      default -> property(symbol);
    };
  }

  private DeckInput useInput(String symbol, DeckCalculation stress) {
    return switch (symbol) {
      case "f_o" -> strength();
      case "φ_R" -> new DeckInput.OfFigure(symbol, factors.factor());
      case "γ_M" -> new DeckInput.OfFigure(symbol, factors.divisor());
      default -> new DeckInput.OfStep(stress, symbol);
    };
  }

  private DeckInput strength() {
    return new DeckInput.OfAlloy(plank.alloy(), "f_o", plank.alloy().proofStrength());
  }

  private DeckInput wallInput(String symbol, DeckCalculation stress, DeckCalculation used) {
    boolean classA = plank.alloy().bucklingClass() == BucklingClass.A;
    WallLimits limits = classA ? WallLimits.CLASS_A : WallLimits.CLASS_B;
    String buckling = classA ? " A" : " B";
    return switch (symbol) {
      case "σ_N", "σ_My", "σ_Mz" -> new DeckInput.OfStep(stress, symbol);
      case "f_d" -> new DeckInput.OfStep(used, symbol);
      case "f_o" -> strength();
      case "β3_int" -> new DeckInput.OfFigure(symbol + buckling, limits.inner());
      case "β3_out" -> new DeckInput.OfFigure(symbol + buckling, limits.outstand());
      default -> property(symbol);
    };
  }
}
