package spanledger.job.dxf;

import spanledger.job.problem.Finding;
import spanledger.job.problem.Place;
import spanledger.job.problem.Pointer;
import spanledger.job.problem.ProblemLog;

/** Reports faults of a drawing by line. */
record DxfLog(ProblemLog log) {

  /** An error at a line; 0 for the drawing as a whole. */
  void error(int line, String found, String expected, String remedy) {
    log.error(Pointer.ROOT, place(line), new Finding(found, expected, remedy));
  }

  /** A warning at a line; 0 for the drawing as a whole. */
  void warning(int line, String found, String expected, String remedy) {
    log.warning(Pointer.ROOT, place(line), new Finding(found, expected, remedy));
  }

  private static Place place(int line) {
    return line == 0 ? Place.WHOLE_FILE : new Place(line, 1);
  }
}
