package spanledger.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.assembly.PlatformSite;
import spanledger.assembly.ProductLimits;
import spanledger.assembly.StairSite;
import spanledger.job.reading.Fields;
import spanledger.job.source.Located;

/** Decodes what is known of platforms and stairs beyond their frames, and limits of the product. */
final class SiteDecoder {

  private final AssemblyFields values;

  SiteDecoder(AssemblyFields values) {
    this.values = values;
  }

  /** What a platform's {@code site} says; nothing known if it is left out. */
  Optional<PlatformSite> platform(Fields platform) {
    Optional<Located> site = platform.find("site");
    return site.isEmpty()
        ? Optional.of(PlatformSite.UNKNOWN)
        : values.reading().fields("platformSite", site.get()).flatMap(this::platformSite);
  }

  private Optional<PlatformSite> platformSite(Fields fields) {
    Optional<Boolean> people = values.flag(fields, "peopleBelow", false);
    Optional<Double> width = given(fields, "clearWidth");
    Optional<Double> headroom = given(fields, "headroom");
    Optional<Double> opening = given(fields, "deckOpening");
    return people.isPresent()
            && isSound(fields, "clearWidth", width)
            && isSound(fields, "headroom", headroom)
            && isSound(fields, "deckOpening", opening)
        ? Optional.of(new PlatformSite(width, headroom, opening, people.get()))
        : Optional.empty();
  }

  /** What a stair's {@code site} says; nothing known if it is left out. */
  Optional<StairSite> stair(Fields stair) {
    Optional<Located> site = stair.find("site");
    return site.isEmpty()
        ? Optional.of(StairSite.UNKNOWN)
        : values.reading().fields("stairSite", site.get()).flatMap(this::stairSite);
  }

  private Optional<StairSite> stairSite(Fields fields) {
    Optional<Double> width = given(fields, "clearWidth");
    Optional<Double> headroom = given(fields, "headroom");
    List<Located> rises = fields.findList("builtRises");
    List<Double> built = new ArrayList<>();
    rises.forEach(rise -> values.size(rise).ifPresent(built::add));
    return isSound(fields, "clearWidth", width)
            && isSound(fields, "headroom", headroom)
            && built.size() == rises.size()
        ? Optional.of(new StairSite(width, headroom, built))
        : Optional.empty();
  }

  /** The limits of the product. */
  Optional<ProductLimits> product(Located value) {
    return values.reading().fields("product", value).flatMap(this::product);
  }

  private Optional<ProductLimits> product(Fields fields) {
    Optional<Double> bearer = given(fields, "bearerFromEnd");
    Optional<Double> posts = given(fields, "postSpacing");
    Optional<Double> rails = given(fields, "railSupport");
    Optional<Double> least = given(fields, "legLeast");
    Optional<Double> most = given(fields, "legMost");
    String source = fields.findText("source");
    return isSound(fields, "bearerFromEnd", bearer)
            && isSound(fields, "postSpacing", posts)
            && isSound(fields, "railSupport", rails)
            && isSound(fields, "legLeast", least)
            && isSound(fields, "legMost", most)
            && !source.isEmpty()
        ? Optional.of(new ProductLimits(bearer, posts, rails, least, most, source))
        : Optional.empty();
  }

  private Optional<Double> given(Fields fields, String key) {
    return fields.find(key).flatMap(values::size);
  }

  private static boolean isSound(Fields fields, String key, Optional<Double> read) {
    return fields.has(key) == read.isPresent();
  }
}
