package spanledger.verification;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.Architectures;
import com.tngtech.archunit.library.Architectures.LayeredArchitecture;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.NullMarked;
import spanledger.resistance.member.Working;

/** What may know what, one rule per test. Package names are the parts after {@code spanledger}. */
@AnalyzeClasses(packages = "spanledger", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  /**
   * The packages of calc-core from what needs nothing to what needs most: each may use only those
   * of earlier rows, so packages of one row may not use each other. A new package gets its place
   * here.
   */
  private static final List<List<String>> CORE_ORDER =
      List.of(
          List.of("provenance"),
          List.of("quantity"),
          List.of("procedure"),
          List.of("material", "section", "bolt"),
          List.of("frame"),
          List.of("joint"),
          List.of("action"),
          List.of("sparse"),
          List.of("assembly", "parts"),
          List.of("geometry"),
          List.of("analysis"),
          List.of("stability"),
          List.of("state", "vibration"),
          List.of("resistance"),
          List.of("deck"),
          List.of("envelope"),
          List.of("behaviour"),
          List.of("overturning"),
          List.of("memberdesign"),
          List.of("jointdesign"),
          List.of("robustness"),
          List.of("verdict"));

  private static final List<String> TABLES = List.of("tables");
  private static final List<String> REPORT =
      List.of("job", "extrusion", "picture", "workbook", "summary", "cli");
  private static final List<String> PROOF = List.of("verification");

  @ArchTest static final ArchRule coreIsOneWay = oneWay(CORE_ORDER);

  @ArchTest
  static final ArchRule packagesAreFreeOfCycles =
      slices().matching("spanledger.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule coreReadsNoFilesAndKnowsNoFormats =
      noClasses()
          .that()
          .resideInAnyPackage(packages(core()))
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "java.nio.file..",
              "com.fasterxml.jackson..",
              "com.networknt..",
              "org.apache.poi..",
              "picocli..",
              "tech.units..")
          .orShould()
          .dependOnClassesThat()
          .haveNameMatching("java\\.io\\.(File.*|RandomAccessFile)")
          .because("calc-core is pure calculation");

  @ArchTest
  static final ArchRule tablesKnowNoReportAndNoSpreadsheet =
      noClasses()
          .that()
          .resideInAnyPackage(packages(TABLES))
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(packages(REPORT))
          .orShould()
          .dependOnClassesThat()
          .resideInAnyPackage("org.apache.poi..", "picocli..")
          .allowEmptyShould(true); // holds before the first class of section-tables, too

  @ArchTest
  static final ArchRule onlyTheWorkbookKnowsTheSpreadsheetLibrary =
      noClasses()
          .that()
          .resideOutsideOfPackage("spanledger.workbook..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.apache.poi..");

  @ArchTest
  static final ArchRule onlyTheCommandLineKnowsPicocli =
      noClasses()
          .that()
          .resideOutsideOfPackage("spanledger.cli..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("picocli..");

  @ArchTest
  static final ArchRule packagesAreNamedByConcept =
      noClasses()
          .should()
          .resideInAnyPackage(
              "..util..", "..utils..", "..common..", "..manager..", "..helper..", "..helpers..");

  @ArchTest
  static final ArchRule classesAreNamedByConcept =
      noClasses().should().haveNameMatching(".*(Utils?|Helpers?|Managers?)");

  /**
   * Joints are replayed under hundreds of states, so nothing may be chosen by a load outside of
   * procedures and solvers. Those named read springs before loads come, hand forces to a solver, or
   * read what was found. Feet are worked out in full under every state.
   */
  @ArchTest
  static final ArchRule jointsChooseNothingByTheirLoads =
      noClasses()
          .that()
          .resideInAnyPackage("spanledger.jointdesign", "spanledger.resistance.joint")
          .and()
          .haveNameNotMatching(
              ".*\\.(FaceStiffness|JointTests|FaceSharing|SharedBrackets|JointCheck|WorstChecks|FootJudge"
                  + "|BasePlateCalculation|DeclaredCalculation)(\\$.*)?")
          .should()
          .callMethod(Working.class, "value", String.class)
          .because("a choice by loads is a step of a procedure, as the greatest pull on a bolt is");

  @ArchTest
  static final ArchRule noStaticStateChanges =
      noFields()
          .that()
          .areStatic()
          .should()
          .notBeFinal()
          .because("the same input must give the same output, whatever ran before");

  /** Null-marking a package is what makes NullAway check it. */
  @ArchTest
  static void everyPackageIsNullMarked(JavaClasses classes) {
    TreeSet<String> unmarked = new TreeSet<>();
    for (JavaClass javaClass : classes) {
      if (!javaClass.getPackage().isAnnotatedWith(NullMarked.class)) {
        unmarked.add(javaClass.getPackageName());
      }
    }
    assertThat(unmarked).as("packages without @NullMarked in package-info.java").isEmpty();
  }

  /** A package that no rule names would escape the rules. */
  @ArchTest
  static void everyPackageHasItsPlace(JavaClasses classes) {
    List<String> known = new ArrayList<>(core());
    known.addAll(TABLES);
    known.addAll(REPORT);
    known.addAll(PROOF);
    TreeSet<String> unplaced = new TreeSet<>();
    for (JavaClass javaClass : classes) {
      // module-info is not in a package.
      if (!javaClass.getPackageName().isEmpty()
          && !known.contains(javaClass.getPackageName().split("\\.", -1)[1])) {
        unplaced.add(javaClass.getPackageName());
      }
    }
    assertThat(unplaced).as("packages that ArchitectureTest gives no place").isEmpty();
  }

  private static ArchRule oneWay(List<List<String>> rows) {
    LayeredArchitecture order =
        Architectures.layeredArchitecture()
            .consideringOnlyDependenciesInAnyPackage("spanledger..")
            .withOptionalLayers(true);
    for (List<String> row : rows) {
      for (String name : row) {
        order = order.layer(name).definedBy(packages(List.of(name)));
      }
    }
    List<String> earlier = new ArrayList<>();
    for (List<String> row : rows) {
      for (String name : row) {
        order =
            earlier.isEmpty()
                ? order.whereLayer(name).mayNotAccessAnyLayer()
                : order.whereLayer(name).mayOnlyAccessLayers(earlier.toArray(String[]::new));
      }
      earlier.addAll(row);
    }
    return order.because("nothing later is needed by anything earlier");
  }

  private static List<String> core() {
    return CORE_ORDER.stream().flatMap(List::stream).toList();
  }

  private static String[] packages(List<String> names) {
    return names.stream().map(name -> "spanledger." + name + "..").toArray(String[]::new);
  }
}
