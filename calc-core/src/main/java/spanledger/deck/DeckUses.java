package spanledger.deck;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import spanledger.action.DeckShares;
import spanledger.action.DeckSpans;
import spanledger.action.Surface;
import spanledger.assembly.Flight;

/**
 * Which panels a structure uses, and where nothing is said of them.
 *
 * @param uses the uses, floors first
 * @param unknown the decks, floors and flights of which no panel is named
 */
public record DeckUses(List<DeckUse> uses, List<String> unknown) {

  /** Names of the floors of a platform's deck have this between platform and bay. */
  private static final String DECK = "/deck/";

  public DeckUses {
    uses = List.copyOf(uses);
    unknown = List.copyOf(unknown);
  }

  /**
   * The uses of panels.
   *
   * @param surfaces the floors, those of flights among them
   * @param flights the flights of stairs
   * @param panels the panels by name
   * @throws IllegalArgumentException if a floor cannot be shared out to its members
   */
  public static DeckUses of(
      List<Surface> surfaces, List<Flight> flights, Map<String, Panel> panels) {
    Map<String, DeckUse> uses = new LinkedHashMap<>();
    List<String> unknown = new ArrayList<>();
    List<String> flightFloors = flights.stream().map(Flight::floorName).toList();
    for (Surface surface : surfaces) {
      if (flightFloors.contains(surface.name())) {
        continue;
      }
      Optional<Panel> panel = surface.panel().map(panels::get);
      if (panel.isEmpty()) {
        add(unknown, subject(surface.name()));
      } else {
        DeckUse use = floor(surface, panel.get());
        uses.merge(key(use), use, DeckUses::worse);
      }
    }
    for (Flight flight : flights) {
      Optional<Panel> panel = flight.stair().treadPanel().map(panels::get);
      String subject = flight.stair().name() + "/treads";
      if (panel.isEmpty()) {
        add(unknown, subject);
      } else {
        uses.put(subject, treads(subject, flight, panel.get()));
      }
    }
    return new DeckUses(List.copyOf(uses.values()), unknown);
  }

  private static void add(List<String> names, String name) {
    if (!names.contains(name)) {
      names.add(name);
    }
  }

  /** The floors of a platform are judged together. */
  private static String subject(String surface) {
    int deck = surface.indexOf(DECK);
    return deck < 0 ? surface : surface.substring(0, deck + DECK.length() - 1);
  }

  private static String key(DeckUse use) {
    return use.subject() + "|" + use.panel().name() + "|" + use.finishes();
  }

  private static DeckUse floor(Surface surface, Panel panel) {
    DeckSpans spans = DeckShares.spans(surface);
    return new DeckUse(
        subject(surface.name()),
        panel,
        DeckUse.Kind.FLOOR,
        spans.greatest(),
        String.format(
            Locale.ROOT,
            "panel %s over %.0f mm from %s to %s",
            panel.name(),
            spans.greatest(),
            spans.from(),
            spans.to()),
        spans.overhang(),
        surface.finishes(),
        0);
  }

  private static DeckUse treads(String subject, Flight flight, Panel panel) {
    double width = flight.stair().width();
    return new DeckUse(
        subject,
        panel,
        DeckUse.Kind.TREADS,
        width,
        String.format(
            Locale.ROOT, "panel %s over %.0f mm between the stringers", panel.name(), width),
        0,
        panel.weight(),
        flight.going());
  }

  private static DeckUse worse(DeckUse one, DeckUse other) {
    DeckUse wider = other.span() > one.span() ? other : one;
    return new DeckUse(
        wider.subject(),
        wider.panel(),
        wider.kind(),
        wider.span(),
        wider.where(),
        Math.max(one.overhang(), other.overhang()),
        wider.finishes(),
        wider.going());
  }
}
