package spanledger.memberdesign;

import java.util.ArrayList;
import java.util.List;
import spanledger.envelope.Station;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.Segment;
import spanledger.resistance.member.MemberCase;

/** Places along a member, mm from its first node, and its cuts. */
final class MemberPlaces {

  private final List<Segment> segments;

  MemberPlaces(Frame frame, Member member) {
    segments = frame.segmentsOf(member);
  }

  /** The place of a cut. */
  double of(Station cut) {
    double before = 0;
    for (Segment segment : segments) {
      if (segment.index() == cut.segment().index()) {
        return before + segment.start().offset().norm() + cut.x();
      }
      before += between(segment);
    }
    throw new IllegalArgumentException(cut.words() + " is no cut of the member.");
  }

  /** The cuts where the member is welded or drilled; none beyond its ends. */
  List<Station> weakened(MemberCase member) {
    List<Station> cuts = new ArrayList<>();
    member.weakPlaces().forEach(place -> addAt(place, cuts));
    return cuts;
  }

  private void addAt(double place, List<Station> cuts) {
    double before = 0;
    for (Segment segment : segments) {
      double x = place - before - segment.start().offset().norm();
      if (x >= 0 && x <= segment.length()) {
        cuts.add(new Station(segment, x));
        return;
      }
      before += between(segment);
    }
  }

  private static double between(Segment segment) {
    return segment.second().place().minus(segment.first().place()).norm();
  }
}
