package spanledger.job;

import java.util.List;
import java.util.Optional;
import spanledger.frame.Node;
import spanledger.frame.Restraint;
import spanledger.job.reading.Reading;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedText;

/** Decodes what the ground holds at the feet of an assembly. */
final class FootDecoder {

  private final Reading reading;
  private final SupportDecoder supports;

  FootDecoder(Reading reading) {
    this.reading = reading;
    // The schema gives feet of assemblies no springs with bounds, so the bound does not matter.
    SpringDecoder springs = new SpringDecoder(reading, StiffnessBound.LOWER, new SpringOrigins());
    this.supports = new SupportDecoder(reading, springs, new Names<Node>(reading, "node"));
  }

  Optional<List<Restraint>> decode(Located foot) {
    if (foot instanceof LocatedText) {
      return supports.ofType(foot);
    }
    return reading
        .fields("footHolds", foot)
        .flatMap(fields -> supports.apart(new Located.Entry("foot", foot.place(), foot), fields));
  }
}
