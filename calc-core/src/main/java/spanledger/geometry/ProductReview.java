package spanledger.geometry;

import java.util.Collections;
import java.util.Optional;
import spanledger.action.Figure;
import spanledger.assembly.GeneratedFrame;
import spanledger.assembly.Platform;
import spanledger.assembly.ProductLimits;
import spanledger.assembly.RailStretch;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** The geometry of platforms against what the maker of the product states. */
final class ProductReview {

  private final ProductLimits limits;
  private final Findings findings;

  ProductReview(ProductLimits limits, Findings findings) {
    this.limits = limits;
    this.findings = findings;
  }

  void run(Platform platform, GeneratedFrame frame) {
    add(
        "bearer from the end",
        platform,
        Optional.of(platform.bearers().fromEnds()),
        limits.bearerFromEnd());
    add(
        "distance between posts",
        platform,
        Optional.of(Collections.max(platform.bays())),
        limits.postSpacing());
    add(
        "support of the rails",
        platform,
        new PlatformReview(platform, frame, findings).widest().map(RailStretch::length),
        limits.railSupport());
  }

  private void add(String check, Platform platform, Optional<Double> size, Optional<Double> limit) {
    if (size.isPresent() && limit.isPresent()) {
      findings.add(
          check,
          platform.name(),
          size.get(),
          new Figure(
              "product: " + check,
              "limit stated by the maker, " + check,
              "",
              limit.get(),
              Dimension.LENGTH,
              Source.declared(limits.source()),
              ""));
    }
  }
}
