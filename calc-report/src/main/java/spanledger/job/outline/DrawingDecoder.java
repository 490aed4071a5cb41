package spanledger.job.outline;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import spanledger.job.dxf.DxfOptions;
import spanledger.job.dxf.DxfReader;
import spanledger.job.problem.ProblemLog;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedText;
import spanledger.job.source.Quoted;
import spanledger.section.outline.Outline;

/** Takes outlines from the drawing that an outline file names. */
final class DrawingDecoder {

  private final Reading reading;
  private final Lengths lengths;

  DrawingDecoder(Reading reading, Lengths lengths) {
    this.reading = reading;
    this.lengths = lengths;
  }

  /** The pieces of the drawing; none if there are faults, which are reported. */
  List<Outline> decode(Located value) {
    Optional<Fields> read = reading.fields("drawing", value);
    if (read.isEmpty()) {
      return List.of();
    }
    Fields fields = read.get();
    Optional<LocatedText> file = fields.requireText("file");
    Set<String> layers = new TreeSet<>();
    for (Located layer : fields.findList("layers")) {
      if (layer instanceof LocatedText text) {
        layers.add(text.text());
      } else {
        reading.gap(layer.pointer());
      }
    }
    OptionalDouble unit =
        fields
            .find("unit")
            .flatMap(u -> new Values(reading).word(u, OutlineDecoder.UNITS))
            .map(OptionalDouble::of)
            .orElse(OptionalDouble.empty());
    Optional<Double> join =
        fields.find("joinWithin").map(lengths::positive).orElse(Optional.of(DxfOptions.USUAL_JOIN));
    if (file.isEmpty() || join.isEmpty()) {
      return List.of();
    }
    return read(file.get(), new DxfOptions(unit, layers, join.get()));
  }

  private List<Outline> read(LocatedText file, DxfOptions options) {
    Path path;
    try {
      path = reading.directory().resolve(file.text());
    } catch (InvalidPathException e) {
      reading.error(file, Quoted.text(file.text()), "the path of a drawing", "correct the path");
      return List.of();
    }
    ProblemLog drawing = new ProblemLog(path.toString());
    Optional<DxfReader.Drawing> read = DxfReader.read(path, options, drawing);
    NestedProblems.report(drawing.inOrder(), file.text(), file, reading);
    return read.map(DxfReader.Drawing::pieces).orElse(List.of());
  }
}
