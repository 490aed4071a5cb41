package spanledger.picture.structure;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import spanledger.action.ActionPlanner;
import spanledger.action.Actions;
import spanledger.analysis.FrameAnalysis;
import spanledger.job.Job;
import spanledger.job.JobReader;
import spanledger.job.ReadJob;
import spanledger.job.Tables;
import spanledger.picture.Drawing;
import spanledger.picture.Lettering;
import spanledger.picture.Mark;
import spanledger.verdict.Assessment;
import spanledger.verdict.Assessor;

/** Jobs of the documentation, ready to be drawn. */
final class Example {

  static final Lettering LETTERING = Lettering.read();

  /** The repository. */
  static final Path ROOT = Path.of(System.getProperty("spanledger.root", ".."));

  private Example() {}

  static Job job(String name) {
    Path file = ROOT.resolve("docs/examples").resolve(name + ".json");
    return ((ReadJob.Accepted) new JobReader(Tables.shipped()).read(file)).job();
  }

  static Subject subject(String name) {
    return Subject.of(job(name), LETTERING);
  }

  static Actions actions(Job job) {
    return ActionPlanner.plan(
        job.frame(),
        job.surfaces(),
        job.rails(),
        job.userCases(),
        job.trains(),
        job.rules(),
        job.combinations());
  }

  static Assessment assessment(Job job) {
    return new Assessor(job.rules(), job.rails(), job.placesPerSegment())
        .inOrder(job.analysis().secondOrder())
        .withGeometry(job.assembly().map(built -> built.geometry(job.rules())))
        .byCode(job.memberDesign())
        .assess(new FrameAnalysis(job.frame()), actions(job), job.combinations());
  }

  static List<String> words(Drawing drawing) {
    List<String> words = new ArrayList<>();
    for (Mark mark : drawing.marks()) {
      if (mark instanceof Mark.Words some) {
        words.add(some.words());
      }
    }
    return words;
  }
}
