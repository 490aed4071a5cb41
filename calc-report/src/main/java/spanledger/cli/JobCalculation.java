package spanledger.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.action.ActionPlanner;
import spanledger.action.Actions;
import spanledger.analysis.FrameAnalysis;
import spanledger.analysis.MechanismException;
import spanledger.deck.DeckJudgement;
import spanledger.job.Job;
import spanledger.job.problem.Problem;
import spanledger.parts.PieceList;
import spanledger.picture.Lettering;
import spanledger.picture.structure.StructureAlbum;
import spanledger.summary.PiecesCsv;
import spanledger.summary.ResultsJson;
import spanledger.summary.TextSummary;
import spanledger.verdict.Assessment;
import spanledger.verdict.Assessor;
import spanledger.workbook.JobWorkbook;

/** Calculates a job and writes its workbook and results file. */
final class JobCalculation implements JobRunner {

  /** The name of the workbook in the output directory. */
  static final String WORKBOOK = "workbook.xlsx";

  /** The name of the results file in the output directory. */
  static final String RESULTS = "results.json";

  /** The name of the list of pieces in the output directory. */
  static final String PIECES = "parts.csv";

  /** The name of the folder with pictures in the output directory. */
  static final String PICTURES = "pictures";

  @Override
  public int run(Path file, List<Job> jobs, List<Problem> warnings, Output output)
      throws IOException {
    Progress progress = new Progress(output);
    List<Assessment> assessments = new ArrayList<>();
    for (Job one : jobs) {
      progress.step("searching combinations, places and cuts" + bound(jobs, one));
      Optional<Assessment> assessed = assess(file, one, output);
      if (assessed.isEmpty()) {
        return ExitCode.BAD_INPUT;
      }
      assessments.add(assessed.get());
    }
    Job job = jobs.get(0);
    Assessment assessment = worse(jobs, assessments);
    String results =
        ResultsJson.of(
            job.title().title(),
            job.sha256(),
            job.rules().id(),
            job.combinations().id(),
            assessment);
    progress.step("drawing");
    List<StructureAlbum> albums = albums(jobs, assessments, output);
    progress.step("writing the workbook");
    try {
      write(jobs, assessments, albums, results, output.directory());
    } catch (IOException e) {
      output
          .err()
          .println(
              "The results cannot be written to "
                  + output.directory()
                  + ": "
                  + reason(e)
                  + ". Give another directory with --out, or make this one writable.");
      output.err().flush();
      return ExitCode.BAD_INPUT;
    }
    progress.done();
    print(jobs, assessment, results, output);
    return assessment.allPassed() ? ExitCode.ALL_PASS : ExitCode.NOT_ALL_PASS;
  }

  /**
   * The assessment, or nothing after a message if the structure of the job cannot be calculated.
   */
  private static Optional<Assessment> assess(Path file, Job job, Output output) {
    Actions actions;
    FrameAnalysis analysis;
    try {
      actions =
          ActionPlanner.plan(
              job.frame(),
              job.surfaces(),
              job.rails(),
              job.userCases(),
              job.trains(),
              job.rules(),
              job.combinations(),
              job.analysis().sway());
      analysis = new FrameAnalysis(job.frame());
    } catch (IllegalArgumentException e) {
      return refused(file, output, e);
    }
    try {
      return Optional.of(
          new Assessor(job.rules(), job.rails(), job.placesPerSegment())
              .inOrder(job.analysis().secondOrder())
              .withGeometry(job.assembly().map(built -> built.geometry(job.rules())))
              .withDeck(DeckJudgement.of(job.deck(), job.rules(), job.combinations()))
              .byCode(job.memberDesign())
              .withJoints(job.jointDesign())
              .withStanding(StandingReview.of(job, actions))
              .assess(analysis, actions, job.combinations()));
    } catch (MechanismException e) {
      return refused(file, output, e);
    }
  }

  private static List<StructureAlbum> albums(
      List<Job> jobs, List<Assessment> assessments, Output output) {
    List<StructureAlbum> albums = new ArrayList<>();
    Lettering lettering = Lettering.read();
    for (int i = 0; i < jobs.size(); i++) {
      albums.add(
          output.pictures()
              ? StructureAlbum.of(jobs.get(i), assessments.get(i), lettering)
              : StructureAlbum.none(lettering));
    }
    return albums;
  }

  private static Optional<Assessment> refused(
      Path file, Output output, IllegalArgumentException e) {
    output.err().println(file + ": the structure cannot be calculated: " + e.getMessage());
    output.err().flush();
    return Optional.empty();
  }

  /**
   * Writes all files beside their places, then moves them in, so that none is ever half written.
   */
  private static void write(
      List<Job> jobs,
      List<Assessment> assessments,
      List<StructureAlbum> albums,
      String results,
      Path directory)
      throws IOException {
    Files.createDirectories(directory);
    Path beside = directory.resolve("." + RESULTS + ".part");
    Path pieces = directory.resolve("." + PIECES + ".part");
    List<PictureFolder> pictures = new ArrayList<>();
    for (Job job : jobs) {
      pictures.add(new PictureFolder(directory.resolve(named(PICTURES, jobs, job))));
    }
    try {
      Files.writeString(beside, results, StandardCharsets.UTF_8);
      Files.writeString(
          pieces, PiecesCsv.of(PieceList.of(jobs.get(0).frame())), StandardCharsets.UTF_8);
      for (int i = 0; i < jobs.size(); i++) {
        pictures.get(i).writeBeside(albums.get(i));
      }
      for (int i = 0; i < jobs.size(); i++) {
        JobWorkbook.save(
            jobs.get(i),
            assessments.get(i),
            albums.get(i),
            directory.resolve(named(WORKBOOK, jobs, jobs.get(i))));
      }
      Files.move(
          beside,
          directory.resolve(RESULTS),
          StandardCopyOption.REPLACE_EXISTING,
          StandardCopyOption.ATOMIC_MOVE);
      Files.move(
          pieces,
          directory.resolve(PIECES),
          StandardCopyOption.REPLACE_EXISTING,
          StandardCopyOption.ATOMIC_MOVE);
      for (PictureFolder folder : pictures) {
        folder.moveIn();
      }
    } finally {
      for (PictureFolder folder : pictures) {
        folder.removeLeftovers();
      }
      Files.deleteIfExists(beside);
      Files.deleteIfExists(pieces);
    }
  }

  private static String reason(IOException e) {
    String message = e.getMessage();
    String kind = e.getClass().getSimpleName().replace("Exception", "");
    return message == null ? kind : kind + ", " + message;
  }

  /**
   * Each bound of stiffness has a workbook and pictures of its own, as each is a proof of its own.
   */
  private static String named(String name, List<Job> jobs, Job one) {
    if (jobs.size() == 1) {
      return name;
    }
    int dot = name.indexOf('.') < 0 ? name.length() : name.indexOf('.');
    return name.substring(0, dot) + "-" + one.bound().words() + "-stiffness" + name.substring(dot);
  }

  private static String bound(List<Job> jobs, Job one) {
    return jobs.size() == 1 ? "" : ", " + one.bound().words() + " bound of stiffness";
  }

  private static Assessment worse(List<Job> jobs, List<Assessment> assessments) {
    return jobs.size() == 1
        ? assessments.get(0)
        : assessments
            .get(0)
            .worse(
                assessments.get(1),
                jobs.get(0).bound().words() + " bound of stiffness",
                jobs.get(1).bound().words() + " bound of stiffness");
  }

  private static void print(List<Job> jobs, Assessment assessment, String results, Output output) {
    Job job = jobs.get(0);
    if (output.json()) {
      output.out().print(results);
    } else if (!output.quiet()) {
      output
          .out()
          .print(
              TextSummary.of(
                  job.title().title(),
                  "rule set " + job.rules().id() + ", combinations " + job.combinations().id(),
                  assessment));
      String words = "Written: ";
      for (Job one : jobs) {
        output.out().println(words + output.directory().resolve(named(WORKBOOK, jobs, one)));
        words = "         ";
        if (output.pictures()) {
          output.out().println(words + output.directory().resolve(named(PICTURES, jobs, one)));
        }
      }
      output.out().println(words + output.directory().resolve(RESULTS));
      output.out().println("         " + output.directory().resolve(PIECES));
    }
    output.out().flush();
  }
}
