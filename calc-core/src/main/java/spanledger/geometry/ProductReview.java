package spanledger.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import spanledger.action.Figure;
import spanledger.assembly.GeneratedFrame;
import spanledger.assembly.Platform;
import spanledger.assembly.ProductLimits;
import spanledger.assembly.RailStretch;
import spanledger.assembly.Side;
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
    add("longest leg", platform, Optional.of(Collections.max(legs(platform))), limits.legMost());
    add(
        "shortest leg",
        platform,
        Optional.of(Collections.min(legs(platform))),
        limits.legLeast(),
        false);
  }

  /** The lengths of all legs from their ground to the floor. */
  private static List<Double> legs(Platform platform) {
    List<Double> legs = new ArrayList<>();
    for (int line = 1; line <= platform.bays().size() + 1; line++) {
      for (Side side : List.of(Side.NORTH, Side.SOUTH)) {
        legs.add(
            platform.floorHeight()
                - platform.posts().ground().getOrDefault(side.words() + line, 0.0));
      }
    }
    return legs;
  }

  private void add(String check, Platform platform, Optional<Double> size, Optional<Double> limit) {
    add(check, platform, size, limit, true);
  }

  private void add(
      String check,
      Platform platform,
      Optional<Double> size,
      Optional<Double> limit,
      boolean atMost) {
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
              ""),
          atMost);
    }
  }
}
