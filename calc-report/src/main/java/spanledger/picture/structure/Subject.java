package spanledger.picture.structure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.action.Rail;
import spanledger.action.Surface;
import spanledger.frame.Frame;
import spanledger.frame.Segment;
import spanledger.frame.Vector;
import spanledger.job.BuiltAssembly;
import spanledger.job.Job;
import spanledger.picture.Lettering;

/**
 * What pictures are made of.
 *
 * @param title of the job
 * @param frame the members
 * @param surfaces the floors
 * @param rails the guardrails
 * @param assembly the description of which the frame came, if there is one
 * @param lettering draws words
 */
record Subject(
    String title,
    Frame frame,
    List<Surface> surfaces,
    List<Rail> rails,
    Optional<BuiltAssembly> assembly,
    Lettering lettering) {

  Subject {
    surfaces = List.copyOf(surfaces);
    rails = List.copyOf(rails);
  }

  static Subject of(Job job, Lettering lettering) {
    return new Subject(
        job.title().title(), job.frame(), job.surfaces(), job.rails(), job.assembly(), lettering);
  }

  /** Both ends of every segment. */
  List<Vector> places() {
    List<Vector> places = new ArrayList<>();
    for (Segment segment : frame.segments()) {
      places.add(segment.from());
      places.add(segment.to());
    }
    return places;
  }

  /** How a general view looks at it: from where a stair is in front, if there is one. */
  Projection general() {
    boolean fromWest =
        assembly
            .map(
                built ->
                    built.assembly().stairs().stream()
                        .anyMatch(s -> s.side() == spanledger.assembly.Side.WEST))
            .orElse(false);
    return Projection.general(!fromWest);
  }
}
