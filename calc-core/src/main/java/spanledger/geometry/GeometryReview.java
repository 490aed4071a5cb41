package spanledger.geometry;

import java.util.List;
import spanledger.action.RuleSet;
import spanledger.assembly.Assembly;
import spanledger.assembly.Flight;
import spanledger.assembly.GeneratedFrame;
import spanledger.assembly.Platform;

/** The geometry of an assembly against a rule set and the limits of its product. */
public final class GeometryReview {

  private GeometryReview() {}

  /**
   * All sizes for which the rule set or the product has a limit, in the order of the assembly.
   *
   * @param frame the frame that the assembly made
   */
  public static List<GeometryFinding> of(Assembly assembly, GeneratedFrame frame, RuleSet rules) {
    Findings findings = new Findings(rules);
    for (Platform platform : assembly.platforms()) {
      new PlatformReview(platform, frame, findings).run();
      assembly
          .product()
          .ifPresent(limits -> new ProductReview(limits, findings).run(platform, frame));
    }
    for (Flight flight : frame.flights()) {
      new FlightReview(flight, findings).run();
    }
    return findings.all();
  }
}
