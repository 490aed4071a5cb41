package spanledger.verification.en1999;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import spanledger.material.Alloy;
import spanledger.material.HeatAffectedStrengths;
import spanledger.material.ProductForm;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Input;
import spanledger.procedure.Procedure;
import spanledger.resistance.en1999.En1999Procedures;
import spanledger.resistance.en1999.Figures;
import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.PreparedMember;
import spanledger.resistance.member.Working;
import spanledger.tables.AlloyTables;

/** Runs the cases of the data file, each value with its source and tolerance. */
class WorkedValuesTest {

  private static final int LEAST_VALUES = 170;

  @TestFactory
  Stream<DynamicNode> cases() throws IOException {
    try (InputStream in =
        Objects.requireNonNull(WorkedValuesTest.class.getResourceAsStream("cases.json"))) {
      List<JsonNode> cases =
          new ObjectMapper().readTree(in).required("cases").valueStream().toList();
      assertThat(cases.stream().mapToInt(one -> one.required("expected").size()).sum())
          .as("values")
          .isGreaterThanOrEqualTo(LEAST_VALUES);
      return cases.stream().map(this::tests);
    }
  }

  private DynamicNode tests(JsonNode one) {
    List<DynamicTest> tests = new ArrayList<>();
    Values values = values(one.required("kind").asText(), one.required("given"));
    for (JsonNode expected : one.required("expected")) {
      String what = expected.required("what").asText();
      double value = expected.required("value").asDouble();
      tests.add(
          DynamicTest.dynamicTest(
              what + " = " + value,
              () ->
                  assertThat(values.of(what))
                      .as(
                          "%s by %s; tolerance: %s",
                          what,
                          one.required("source"),
                          expected.required("toleranceReason").asText())
                      .isCloseTo(value, within(expected.required("tolerance").asDouble()))));
    }
    return DynamicContainer.dynamicContainer(
        one.required("id").asText() + ": " + one.required("description").asText(), tests);
  }

  private interface Values {
    double of(String what);
  }

  private static Values values(String kind, JsonNode given) {
    return switch (kind) {
      case "member" -> member(GivenMember.of(given));
      case "procedure" -> procedure(given);
      case "curve" -> what -> reduction(given.required("curve").asText(), what);
      case "effectiveThickness" -> what -> thickness(given.required("row").asText(), what);
      case "softening" -> WorkedValuesTest::softening;
      default -> throw new IllegalArgumentException("Unknown kind " + kind);
    };
  }

  /** A step of the last run of a procedure whose label starts so: later passes count. */
  private static Values member(PreparedMember member) {
    return what -> {
      String[] path = what.split("/", -1);
      Working found = null;
      for (Working working : member.workings()) {
        boolean named = working.procedure().procedure().name().equals("en1999-" + path[0]);
        boolean labelled =
            working.label().equals(path[1]) || working.label().startsWith(path[1] + ", pass");
        found = named && labelled ? working : found;
      }
      return Objects.requireNonNull(found, what).value(path[2]);
    };
  }

  private static Procedure named(String name) {
    return En1999Procedures.all().stream()
        .filter(procedure -> procedure.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static Values procedure(JsonNode given) {
    CompiledProcedure compiled = named(given.required("procedure").asText()).compile();
    double[] values =
        compiled.run(
            compiled.procedure().inputs().stream()
                .mapToDouble(input -> given.required(input.symbol().symbol()).asDouble())
                .toArray());
    return what -> values[compiled.slot(what)];
  }

  /** χ of a curve at a slenderness, by a column whose length has that slenderness. */
  private static double reduction(String curve, String slenderness) {
    CodeFigures figures = GivenMember.figures();
    CompiledProcedure compiled = named("en1999-flexural-buckling").compile();
    double lambda = Double.parseDouble(slenderness);
    double[] inputs = new double[compiled.procedure().inputs().size()];
    List<Input> declared = compiled.procedure().inputs();
    for (int i = 0; i < inputs.length; i++) {
      inputs[i] =
          switch (declared.get(i).symbol().symbol()) {
            case "I" -> 200e3 * 1e6 / (lambda * lambda * Math.PI * Math.PI * 70000);
            case "L_cr", "A_eff" -> 1000;
            case "E" -> 70000;
            case "f_o" -> 200;
            case "α" -> figures.figure(Figures.imperfection(curve)).value();
            case "λ_0" -> figures.figure(Figures.plateau(curve)).value();
            case "w", "B" -> 0;
            default -> 1;
          };
    }
    return compiled.run(inputs)[compiled.slot("χ")];
  }

  /** ρ_c of a wall with ε = 1 and that slenderness. */
  private static double thickness(String row, String slenderness) {
    CodeFigures figures = GivenMember.figures();
    CompiledProcedure compiled = named("en1999-wall-in-compression").compile();
    List<Input> declared = compiled.procedure().inputs();
    double[] inputs = new double[declared.size()];
    for (int i = 0; i < inputs.length; i++) {
      inputs[i] =
          switch (declared.get(i).symbol().symbol()) {
            case "b" -> Double.parseDouble(slenderness);
            case "f_o" -> 250;
            case "A_0" -> 1000;
            case "β_1" -> figures.figure(row + ".beta1").value();
            case "β_2" -> figures.figure(row + ".beta2").value();
            case "β_3" -> figures.figure(row + ".beta3").value();
            case "C_1" -> figures.figure(row + ".C1").value();
            case "C_2" -> figures.figure(row + ".C2").value();
            case "u" -> 0;
            default -> 1;
          };
    }
    return compiled.run(inputs)[compiled.slot("ρ_c")];
  }

  /** Alloy, thickness, form and which factor. */
  private static double softening(String what) {
    String[] words = what.split(" ", -1);
    double thickness = Double.parseDouble(words[1]);
    ProductForm form =
        words[2].equals("open") ? ProductForm.OPEN_PROFILE : ProductForm.HOLLOW_PROFILE;
    Alloy alloy = AlloyTables.standard().select(words[0], form, thickness, thickness);
    HeatAffectedStrengths beside = alloy.heatAffected().orElseThrow();
    return words[3].equals("o")
        ? beside.proofStrength() / alloy.proofStrength()
        : beside.ultimateStrength() / alloy.ultimateStrength();
  }
}
