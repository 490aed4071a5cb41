package spanledger.job.outline;

import java.util.List;
import spanledger.job.problem.Place;
import spanledger.job.problem.Problem;
import spanledger.job.reading.Reading;
import spanledger.job.source.Located;

/** Tells the problems of a file at the place where another file names it. */
public final class NestedProblems {

  private NestedProblems() {}

  /**
   * Reports each problem with its place in its own file.
   *
   * @param file the other file as it is named
   * @param named where it is named
   */
  public static void report(List<Problem> problems, String file, Located named, Reading reading) {
    for (Problem problem : problems) {
      Place place = problem.place();
      String where =
          place.equals(Place.WHOLE_FILE)
              ? "in " + file
              : "in " + file + ":" + place.line() + ":" + place.column();
      String pointer = problem.pointer().text().isEmpty() ? "" : " " + problem.pointer();
      String found = where + pointer + ": " + problem.found();
      if (problem.isError()) {
        reading.error(named, found, problem.expected(), problem.remedy());
      } else {
        reading.warning(named, found, problem.expected(), problem.remedy());
      }
    }
  }
}
