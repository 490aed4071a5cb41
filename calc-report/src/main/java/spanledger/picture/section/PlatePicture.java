package spanledger.picture.section;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import spanledger.picture.Drawing;
import spanledger.picture.Ink;
import spanledger.picture.Lettering;
import spanledger.picture.Pen;
import spanledger.picture.Trace;
import spanledger.picture.page.Legend;
import spanledger.section.SectionStudy;
import spanledger.section.outline.Edge;
import spanledger.section.outline.Face;
import spanledger.section.outline.Outline;
import spanledger.section.outline.Point;
import spanledger.section.plate.Certainty;
import spanledger.section.plate.Plate;
import spanledger.section.plate.PlateDoubt;
import spanledger.section.plate.PlateKind;

/** The plates that were recognised, what the program is unsure about, and the named faces. */
public final class PlatePicture {

  private static final Ink FAINT = new Ink(0xF1F4F4);
  private static final Pen EDGE = Pen.full(new Ink(0x8A9499), 0.9);
  private static final Pen FACE = FeatureMarks.FACE;
  private static final double HEAVY = 3.2;
  private static final Ink WARNING = new Ink(0x7A2222);

  private final SectionStudy study;
  private final Sheet sheet;
  private final View view;

  private PlatePicture(SectionStudy study, String name, Lettering lettering) {
    this.study = study;
    sheet =
        new Sheet(
            lettering, name, "Plates for local buckling as recognised or given, and named faces");
    view = View.of(study.parts(), List.of(), Sheet.room(20));
  }

  /**
   * Draws a section.
   *
   * @param name what the section is called
   */
  public static Drawing of(SectionStudy study, String name, Lettering lettering) {
    return new PlatePicture(study, name, lettering).draw(name);
  }

  private Drawing draw(String name) {
    for (Outline part : study.parts()) {
      sheet.paper.area(view.trace(part), FAINT, EDGE);
      part.edges().forEach(edge -> sheet.labels.avoid(view.spots(edge)));
    }
    List<Plate> plates = study.plates().plates();
    plates.forEach(this::line);
    List<Face> faces = study.parts().stream().flatMap(part -> part.faces().stream()).toList();
    faces.forEach(face -> sheet.paper.line(view.trace(face.edges()), FACE));
    List<PlateDoubt> doubts = study.plates().doubts();
    doubts.forEach(doubt -> Symbols.doubt(sheet.paper, view.spot(doubt.where())));
    plates.forEach(this::number);
    for (int i = 0; i < doubts.size(); i++) {
      sheet.labels.near(view.spot(doubts.get(i).where()), "?" + (i + 1), 12, WARNING, true);
    }
    for (int i = 0; i < faces.size(); i++) {
      Edge edge = faces.get(i).edges().get(faces.get(i).edges().size() / 2);
      sheet.labels.near(view.spot(edge.at(0.5)), letter(i), 12, Ink.BLACK, true);
    }
    FeatureMarks features = new FeatureMarks(sheet, view, faces.size());
    study.features().forEach(features::draw);
    legend(plates, doubts, faces);
    features.legend();
    double low = view.box().bottom() + 60;
    sheet.scaleBar(view, low);
    return sheet.finish(
        low + 10,
        "Plates of " + name,
        "Cross-section with the midlines of its plates, numbered, in the line style of their kind;"
            + " what is unsure is marked with a question mark.");
  }

  private void line(Plate plate) {
    Midline midline = midline(plate);
    sheet.paper.line(view.trace(midline.edges()), pen(plate));
    midline.edges().forEach(edge -> sheet.labels.avoid(view.spots(edge)));
    if (plate.kind() == PlateKind.INTERNAL) {
      held(midline, 0);
      held(midline, 1);
    } else if (plate.kind() != PlateKind.FREE && plate.kind() != PlateKind.ROUND) {
      held(midline, 0);
    }
  }

  private Midline midline(Plate plate) {
    return Midline.of(plate, study.parts());
  }

  /** A dot where the edge of a plate is held. */
  private void held(Midline midline, double t) {
    sheet.paper.area(Trace.circle(view.spot(midline.at(t)), 3.6), Ink.BLACK);
  }

  private static Pen pen(Plate plate) {
    return switch (plate.kind()) {
      case INTERNAL -> Pen.full(new Ink(0x1F4E79), HEAVY);
      case OUTSTAND -> Pen.dashed(new Ink(0xA8500F), HEAVY, 9.0, 4.0);
      case STIFFENED_OUTSTAND -> Pen.dashed(new Ink(0x7A2222), HEAVY, 10.0, 3.0, 2.0, 3.0);
      case ROUND -> Pen.dashed(new Ink(0x1F4E79), HEAVY, 3.0, 3.0);
      case FREE -> Pen.dashed(new Ink(0x59656D), HEAVY, 2.0, 4.0);
    };
  }

  private void number(Plate plate) {
    Point middle = midline(plate).at(0.5);
    String mark = isUnsure(plate) ? plate.name() + " ?" : plate.name();
    sheet.labels.near(view.spot(middle), mark, 12, isUnsure(plate) ? WARNING : Ink.BLACK, true);
  }

  private static boolean isUnsure(Plate plate) {
    return plate.certainty() instanceof Certainty.Unsure;
  }

  private void legend(List<Plate> plates, List<PlateDoubt> doubts, List<Face> faces) {
    Legend legend = sheet.legend;
    legend.heading("Plates, b / t in mm");
    for (PlateKind kind : PlateKind.values()) {
      List<Plate> same = plates.stream().filter(plate -> plate.kind() == kind).toList();
      if (same.isEmpty()) {
        continue;
      }
      legend.line(pen(same.get(0)), kind.words());
      alike(same, this::words)
          .forEach(
              (words, some) ->
                  legend.words(
                      names(some) + ": " + words, isUnsure(some.get(0)) ? WARNING : Ink.BLACK));
    }
    study
        .edits()
        .removed()
        .forEach(p -> legend.words(p.name() + ": removed by the user", Ink.BLACK));
    if (plates.isEmpty()) {
      legend.words("No plate was recognised.", WARNING);
    }
    if (!doubts.isEmpty()) {
      legend.heading("Someone has to look");
      for (int i = 0; i < doubts.size(); i++) {
        PlateDoubt doubt = doubts.get(i);
        String words = "?" + (i + 1) + " at " + doubt.where() + ": " + doubt.because();
        legend.sample(Symbols::doubt, words);
      }
    }
    if (!study.plates().isSure()) {
      legend.words("UNSURE: local buckling is not checked until these are settled.", WARNING);
    }
    if (!faces.isEmpty()) {
      legend.heading("Named faces");
      List<Integer> numbers = IntStream.range(0, faces.size()).boxed().toList();
      alike(numbers, i -> words(faces.get(i)))
          .forEach((words, some) -> legend.line(FACE, letters(some) + ": " + words));
    }
  }

  /** What shares the same words, in order. */
  private static <T> Map<String, List<T>> alike(List<T> all, Function<T, String> words) {
    Map<String, List<T>> alike = new LinkedHashMap<>();
    all.forEach(one -> alike.computeIfAbsent(words.apply(one), w -> new ArrayList<>()).add(one));
    return alike;
  }

  private static String names(List<Plate> plates) {
    return plates.stream().map(Plate::name).collect(Collectors.joining(", "));
  }

  private static String letters(List<Integer> faces) {
    return faces.stream().map(PlatePicture::letter).collect(Collectors.joining(", "));
  }

  private static String words(Face face) {
    return face.name() + ", " + Shown.length(face.length()) + " mm long";
  }

  private String words(Plate plate) {
    String edited = study.edits().words(plate);
    String slenderness = String.format(Locale.ROOT, "%.1f", plate.slenderness()).replace("-", "−");
    return Shown.length(plate.width())
        + " / "
        + Shown.length(plate.thickness())
        + " = "
        + slenderness
        + (plate.bulge() != 0 ? ", curved" : "")
        + (plate.certainty() instanceof Certainty.Unsure unsure
            ? ", unsure, because " + unsure.because()
            : "")
        + (edited.isEmpty() ? "" : ", " + edited);
  }

  private static String letter(int number) {
    return FeatureMarks.letter(number);
  }
}
