package spanledger.picture.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import spanledger.picture.Ink;
import spanledger.picture.Pen;
import spanledger.picture.Spot;
import spanledger.picture.Trace;
import spanledger.section.feature.Feature;
import spanledger.section.feature.KeyedFace;
import spanledger.section.feature.Slot;
import spanledger.section.feature.SlotLip;
import spanledger.section.feature.Web;
import spanledger.section.outline.Point;

/** The named places for joints, lettered, with their sizes in the legend. */
final class FeatureMarks {

  static final Pen FACE = Pen.full(Ink.BLACK, 4);
  private static final Pen SLOT = Pen.full(Ink.BLACK, 1.6);
  private static final Pen LINE = Pen.dashed(Ink.BLACK, 2.2, 1.5, 2.0);
  private static final double ARROW = 26;

  private final Sheet sheet;
  private final View view;
  private final int lettersBefore;
  private final List<Feature> drawn = new ArrayList<>();

  FeatureMarks(Sheet sheet, View view, int lettersBefore) {
    this.sheet = sheet;
    this.view = view;
    this.lettersBefore = lettersBefore;
  }

  /** A, B, .. Z, A1, .. */
  static String letter(int number) {
    String letter = String.valueOf((char) ('A' + number % 26));
    return number < 26 ? letter : letter + number / 26;
  }

  void draw(Feature feature) {
    String letter = letter(lettersBefore + drawn.size());
    drawn.add(feature);
    if (feature instanceof Slot slot) {
      label(arrow(slot), letter);
    } else if (feature instanceof SlotLip lip) {
      label(line(lip.root(), lip.edge(), LINE), letter);
    } else if (feature instanceof KeyedFace face) {
      label(line(face.from(), face.to(), FACE), letter);
      face.groove()
          .ifPresent(
              groove ->
                  sheet.paper.area(
                      Trace.circle(view.spot(groove.at()), 3.2),
                      Ink.WHITE,
                      Pen.full(Ink.BLACK, 1.4)));
    } else if (feature instanceof Web web) {
      label(line(web.from(), web.to(), LINE), letter);
    }
  }

  private void label(Spot at, String letter) {
    sheet.labels.near(at, letter, 12, Ink.BLACK, true);
  }

  private Spot line(Point from, Point to, Pen pen) {
    Spot a = view.spot(from);
    Spot b = view.spot(to);
    sheet.paper.line(Trace.through(a, b), pen);
    sheet.labels.avoid(a, b);
    return a.towards(b, 0.5);
  }

  /** From outside into the mouth. */
  private Spot arrow(Slot slot) {
    Spot tip = view.spot(slot.mouth());
    double dx = slot.opens().y();
    double dy = -slot.opens().z();
    Spot tail = tip.plus(ARROW * dx, ARROW * dy);
    Spot left = tip.plus(7 * dx - 4 * dy, 7 * dy + 4 * dx);
    Spot right = tip.plus(7 * dx + 4 * dy, 7 * dy - 4 * dx);
    sheet.paper.line(Trace.through(tail, tip).and(Trace.through(left, tip, right)), SLOT);
    sheet.labels.avoid(tail, tip);
    return tail;
  }

  void legend() {
    if (drawn.isEmpty()) {
      return;
    }
    sheet.legend.heading("Features for joints, mm");
    for (int i = 0; i < drawn.size(); i++) {
      sheet.legend.words(letter(lettersBefore + i) + ": " + words(drawn.get(i)), Ink.BLACK);
    }
  }

  private static String words(Feature feature) {
    return feature.name()
        + ", "
        + feature.kind()
        + ", "
        + feature.sizes().entrySet().stream()
            .map(size -> spaced(size.getKey()) + " " + Shown.length(size.getValue()))
            .collect(Collectors.joining(", "));
  }

  /** Names of sizes as words: headWidth becomes head width. */
  private static String spaced(String name) {
    return name.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
  }
}
