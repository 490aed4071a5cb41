package spanledger.picture.structure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import spanledger.frame.Member;
import spanledger.frame.Segment;
import spanledger.frame.Vector;
import spanledger.picture.Drawing;
import spanledger.picture.Ink;
import spanledger.picture.Pen;
import spanledger.picture.Spot;
import spanledger.picture.Trace;
import spanledger.verdict.Status;
import spanledger.verdict.Verdict;

/** The members by how much they use of what they may bear. */
final class UtilisationPicture {

  /** So many members are numbered and listed. */
  static final int LISTED = 8;

  private static final double RIM = 30;

  private final Subject subject;
  private final Page page;
  private final Placing placing;
  private final MemberUses uses;

  private UtilisationPicture(Subject subject, List<Verdict> verdicts) {
    this.subject = subject;
    uses = MemberUses.of(subject.frame(), verdicts);
    page = new Page(subject, "Utilisation of members", true);
    placing = Placing.filling(subject.general(), subject.places(), page.room(RIM));
  }

  static Drawing of(Subject subject, List<Verdict> verdicts) {
    return new UtilisationPicture(subject, verdicts).draw();
  }

  /** The members with their bands; floors are left out, so that nothing is hidden. */
  static Scene scene(Subject subject, MemberUses uses) {
    Scene scene = new Scene();
    for (Segment segment : subject.frame().segments()) {
      String name = segment.member().name();
      Verdict worst = uses.worst().get(name);
      BarStyle style = worst == null ? UseBand.unknown() : UseBand.of(worst).style();
      scene.add(new Bar(name, segment.from(), segment.to(), style));
    }
    return scene;
  }

  private Drawing draw() {
    scene(subject, uses).draw(page.paper, page.labels, placing);
    List<Verdict> listed = listed();
    page.legend.heading("Demand per capacity (members)");
    for (UseBand band : UseBand.values()) {
      long count = uses.worst().values().stream().filter(v -> UseBand.of(v) == band).count();
      page.legend.sample(band.style()::sample, band.words() + " (" + count + ")");
    }
    long unknown =
        uses.unchecked().keySet().stream().filter(n -> !uses.worst().containsKey(n)).count();
    if (unknown > 0) {
      page.legend.sample(UseBand.unknown()::sample, "NOT CHECKED (" + unknown + ")");
    }
    page.legend.heading("Worst members");
    for (int i = 0; i < listed.size(); i++) {
      number(listed.get(i), i + 1);
    }
    return page.finish(caption(listed));
  }

  /** The worst members, and of members that are alike only the first. */
  private List<Verdict> listed() {
    List<Verdict> listed = new ArrayList<>();
    for (Verdict verdict : uses.ranked()) {
      boolean alike =
          listed.stream()
              .anyMatch(
                  v ->
                      v.check().equals(verdict.check())
                          && two(v.utilisation()).equals(two(verdict.utilisation()))
                          && v.status() == verdict.status());
      if (!alike && listed.size() < LISTED) {
        listed.add(verdict);
      }
    }
    return listed;
  }

  private void number(Verdict verdict, int number) {
    Spot at = placing.spot(place(verdict));
    String words = number + ": " + two(verdict.utilisation());
    boolean fails = verdict.status() == Status.FAILED;
    page.paper.area(Trace.circle(at, 3.2), Ink.WHITE, Pen.full(Ink.BLACK, 1.2));
    page.labels.near(at, fails ? words + " FAILS" : words, 12, Ink.BLACK, true);
    page.legend.words(
        number
            + ": "
            + verdict.subject()
            + ", "
            + verdict.check()
            + ", "
            + two(verdict.utilisation())
            + (fails
                ? ", FAILS"
                : verdict.status() == Status.NOT_CHECKED ? ", NOT CHECKED in full" : ""),
        fails ? new Ink(0x6E0019) : Ink.BLACK);
  }

  /** Where the verdict governs. */
  private Vector place(Verdict verdict) {
    Optional<Vector> cut =
        verdict
            .governing()
            .map(
                g -> {
                  Segment segment = g.station().segment();
                  double t = Math.min(1, g.station().x() / segment.length());
                  return segment.from().plus(segment.to().minus(segment.from()).times(t));
                });
    return cut.orElseGet(() -> GeneralPicture.middle(member(verdict.subject())));
  }

  private Member member(String name) {
    return subject.frame().members().stream()
        .filter(m -> m.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("No member is named " + name + "."));
  }

  private String caption(List<Verdict> listed) {
    long partly =
        uses.unchecked().entrySet().stream()
            .filter(e -> e.getValue() > 0 && uses.worst().containsKey(e.getKey()))
            .count();
    return "Each member by the worst of its strength, resistance, deflection and guardrail checks"
        + " over"
        + " all combinations and places of moving loads: the verdicts of the sheet Summary; sway"
        + " counts only where it fails. Of members that are alike only the first is listed."
        + (partly == 0
            ? ""
            : partly == 1
                ? " Of one member a check was NOT MADE: see Summary."
                : " Of " + partly + " members a check was NOT MADE: see Summary.")
        + (listed.isEmpty() ? " Nothing was checked." : "");
  }

  static String two(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }
}
