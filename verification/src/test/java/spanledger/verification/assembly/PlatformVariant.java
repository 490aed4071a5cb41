package spanledger.verification.assembly;

import java.util.Optional;
import spanledger.assembly.Bracing;
import spanledger.assembly.CrossBearers;
import spanledger.assembly.Deck;
import spanledger.assembly.EdgeBeams;
import spanledger.assembly.Guardrail;
import spanledger.assembly.Platform;
import spanledger.assembly.PlatformSite;
import spanledger.assembly.Posts;
import spanledger.frame.Vector;

/** A platform that is like another but for some of its parts. */
final class PlatformVariant {

  private final Platform other;
  private String name;
  private Vector corner;
  private Posts posts;
  private EdgeBeams edgeBeams;
  private CrossBearers bearers;
  private Deck deck;
  private Bracing bracing;
  private Optional<Guardrail> guardrail;
  private PlatformSite site;

  private PlatformVariant(Platform other) {
    this.other = other;
    name = other.name();
    corner = other.corner();
    posts = other.posts();
    edgeBeams = other.edgeBeams();
    bearers = other.bearers();
    deck = other.deck();
    bracing = other.bracing();
    guardrail = other.guardrail();
    site = other.site();
  }

  static PlatformVariant of(Platform other) {
    return new PlatformVariant(other);
  }

  PlatformVariant named(String another, Vector at) {
    name = another;
    corner = at;
    return this;
  }

  PlatformVariant with(Posts others) {
    posts = others;
    return this;
  }

  PlatformVariant with(EdgeBeams others) {
    edgeBeams = others;
    return this;
  }

  PlatformVariant with(CrossBearers others) {
    bearers = others;
    return this;
  }

  PlatformVariant with(Deck another) {
    deck = another;
    return this;
  }

  PlatformVariant with(Bracing another) {
    bracing = another;
    return this;
  }

  PlatformVariant with(Guardrail another) {
    guardrail = Optional.of(another);
    return this;
  }

  PlatformVariant with(PlatformSite another) {
    site = another;
    return this;
  }

  Platform platform() {
    return new Platform(
        name,
        corner,
        other.length(),
        other.width(),
        other.floorHeight(),
        other.bays(),
        posts,
        edgeBeams,
        other.endBeams(),
        bearers,
        deck,
        bracing,
        guardrail,
        site);
  }
}
