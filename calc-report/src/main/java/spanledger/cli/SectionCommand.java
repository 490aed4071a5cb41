package spanledger.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import spanledger.extrusion.ExtrusionReport;
import spanledger.job.Tables;
import spanledger.job.dxf.DxfOptions;
import spanledger.job.outline.OutlineReader;
import spanledger.job.outline.ReadOutline;
import spanledger.job.problem.ProblemReport;
import spanledger.material.Alloy;
import spanledger.material.ProductForm;
import spanledger.picture.Lettering;
import spanledger.section.Extrusion;
import spanledger.section.OutlineShape;
import spanledger.section.SectionStudy;
import spanledger.section.mesh.MeshingException;
import spanledger.section.warping.FieldSolver;
import spanledger.summary.SectionJson;
import spanledger.summary.SectionText;

/** Works out the properties of an extrusion from its outline. */
@Command(
    name = "section",
    description = "Works out the properties of an extrusion from its outline and draws it.",
    mixinStandardHelpOptions = true,
    versionProvider = BuildVersion.class)
final class SectionCommand implements Callable<Integer> {

  private static final double FINEST = 1e-5;
  private static final double COARSEST = 0.05;
  private static final double MOST_JOIN = 1;

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "FILE",
      description =
          "The outline file or DXF drawing, see docs/outline-file.md, or the name of a catalogue"
              + " section.")
  private Path file;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Where the results are written; beside the outline file if left out.")
  private @Nullable Path out;

  @Option(names = "--json", description = "Print properties and problems as JSON.")
  private boolean json;

  @Option(names = "--quiet", description = "Print problems only.")
  private boolean quiet;

  @Option(
      names = "--units",
      paramLabel = "UNIT",
      description =
          "Unit of a DXF drawing: mm, cm, m, in or ft; needed if the drawing does not say.")
  private @Nullable String units;

  @Option(
      names = "--layer",
      paramLabel = "NAME",
      description =
          "Layer of a DXF drawing that counts; may be given several times; all if left out.")
  private List<String> layers = new ArrayList<>();

  @Option(
      names = "--join",
      paramLabel = "MM",
      defaultValue = "0.01",
      description =
          "Ends of lines and arcs of a DXF drawing no farther apart are joined (default:"
              + " ${DEFAULT-VALUE}).")
  private double join;

  @Option(
      names = "--alloy",
      paramLabel = "NAME",
      description = "Alloy and temper, for example 6063-T6: adds the mass per metre.")
  private @Nullable String alloy;

  @Option(
      names = "--target",
      paramLabel = "PERCENT",
      defaultValue = "0.1",
      description =
          "Largest error of the torsion constant, in percent (default: ${DEFAULT-VALUE}); a finer one"
              + " takes longer.")
  private double target;

  @Option(
      names = "--poisson",
      paramLabel = "RATIO",
      defaultValue = "0.3",
      description = "Poisson's ratio, for shear areas (default: ${DEFAULT-VALUE}).")
  private double poissonRatio;

  @SuppressWarnings("NullAway.Init") // picocli injects spec and file before it calls the command
  SectionCommand() {}

  @Override
  public Integer call() throws IOException {
    requireOptions();
    PrintWriter results = spec.commandLine().getOut();
    PrintWriter messages = spec.commandLine().getErr();
    JobRunner.Output output =
        new JobRunner.Output(directory(), json, quiet, true, results, messages);
    Progress progress = new Progress(output);
    CatalogueOutlines catalogue = new CatalogueOutlines(Tables.shipped().sections());
    catalogue
        .unknown(file)
        .ifPresent(
            message -> {
              throw wrong(message);
            });
    Optional<Extrusion> known = catalogue.find(file);
    ReadOutline read =
        known.isPresent()
            ? new ReadOutline.Accepted(known.get(), "", List.of())
            : new OutlineReader().read(file, drawing());
    ProblemReport problems = new ProblemReport(file.toString(), read.problems());
    if (read instanceof ReadOutline.Refused) {
      if (json) {
        results.print(problems.json());
      } else {
        messages.print(problems.text());
      }
      results.flush();
      messages.flush();
      return ExitCode.BAD_INPUT;
    }
    messages.print(problems.text());
    messages.flush();
    ReadOutline.Accepted accepted = (ReadOutline.Accepted) read;
    ExtrusionReport report;
    try {
      report = report(accepted, progress);
    } catch (MeshingException e) {
      return refused(messages, "cannot be meshed: " + e.getMessage());
    } catch (IllegalStateException e) {
      return refused(
          messages, e.getMessage() + " Say so under \"composite\", or write a file for each.");
    }
    return write(report, output, progress);
  }

  private void requireOptions() {
    if (!(target / 100 >= FINEST && target / 100 <= COARSEST)) {
      throw wrong(
          "--target is "
              + target
              + " %, expected from "
              + 100 * FINEST
              + " % to "
              + 100 * COARSEST
              + " %.");
    }
    if (units != null && !OutlineReader.UNITS.containsKey(units)) {
      throw wrong(
          "--units is "
              + units
              + ", expected one of "
              + String.join(", ", new TreeSet<>(OutlineReader.UNITS.keySet()))
              + ".");
    }
    if (!(join > 0 && join <= MOST_JOIN)) {
      throw wrong(
          "--join is " + join + " mm, expected more than 0 and up to " + MOST_JOIN + " mm.");
    }
    if (!(poissonRatio >= 0 && poissonRatio <= 0.5)) {
      throw wrong("--poisson is " + poissonRatio + ", expected from 0 to 0.5.");
    }
  }

  private DxfOptions drawing() {
    Double unit = units == null ? null : OutlineReader.UNITS.get(units);
    return new DxfOptions(
        unit == null ? OptionalDouble.empty() : OptionalDouble.of(unit),
        new TreeSet<>(layers),
        join);
  }

  private ExtrusionReport report(ReadOutline.Accepted accepted, Progress progress) {
    Extrusion extrusion = accepted.extrusion();
    if (!extrusion.isOnePiece()) {
      return new ExtrusionReport(
          extrusion,
          file.toString(),
          accepted.sha256(),
          SectionStudy.ofParts(extrusion),
          Optional.empty(),
          chosen(
              extrusion.parts().stream().allMatch(part -> part.outline().holes().isEmpty()),
              Optional.empty()));
    }
    progress.step("meshing, and solving for torsion and shear");
    FieldSolver solver =
        FieldSolver.standard().withTarget(target / 100).withPoissonRatio(poissonRatio);
    OutlineShape shape = extrusion.shape(solver);
    return ExtrusionReport.of(
        extrusion,
        file.toString(),
        accepted.sha256(),
        shape,
        chosen(extrusion.outline().holes().isEmpty(), Optional.of(shape)));
  }

  private Optional<Alloy> chosen(boolean open, Optional<OutlineShape> shape) {
    if (alloy == null) {
      return Optional.empty();
    }
    ProductForm form = open ? ProductForm.OPEN_PROFILE : ProductForm.HOLLOW_PROFILE;
    double thin = shape.map(OutlineShape::thinnestWall).orElse(1.0);
    double thick = shape.map(OutlineShape::thickestWall).orElse(1.0);
    try {
      return Optional.of(Tables.shipped().alloys().select(alloy, form, thin, thick));
    } catch (IllegalArgumentException e) {
      throw wrong("--alloy " + alloy + ": " + e.getMessage());
    }
  }

  private int write(ExtrusionReport report, JobRunner.Output output, Progress progress) {
    Lettering lettering = Lettering.read();
    String properties = SectionJson.of(report);
    SectionFiles files = new SectionFiles(stem(report), output.directory());
    try {
      files.write(report, properties, lettering, progress);
    } catch (IOException e) {
      output
          .err()
          .println(
              "The results cannot be written to "
                  + output.directory()
                  + ": "
                  + e.getClass().getSimpleName().replace("Exception", "")
                  + ", "
                  + e.getMessage()
                  + ". Give another directory with --out, or make this one writable.");
      output.err().flush();
      return ExitCode.BAD_INPUT;
    }
    progress.done();
    if (output.json()) {
      output.out().print(properties);
    } else if (!output.quiet()) {
      output.out().print(SectionText.of(report));
      files.written().forEach(path -> output.out().println("Written: " + path));
    }
    output.out().flush();
    boolean found = report.study().field().map(field -> field.report().targetMet()).orElse(false);
    return found ? ExitCode.ALL_PASS : ExitCode.NOT_ALL_PASS;
  }

  private String stem(ExtrusionReport report) {
    if (report.sha256().isEmpty()) {
      return CatalogueOutlines.stem(report.name());
    }
    String name = String.valueOf(file.getFileName());
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }

  private int refused(PrintWriter messages, String why) {
    messages.println(file + ": " + why);
    messages.flush();
    return ExitCode.BAD_INPUT;
  }

  private Path directory() {
    if (out != null) {
      return out;
    }
    Path parent = file.getParent();
    return parent == null ? Path.of("") : parent;
  }

  private ParameterException wrong(String message) {
    return new ParameterException(spec.commandLine(), message);
  }
}
