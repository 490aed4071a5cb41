package spanledger.job;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import spanledger.frame.Member;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedText;
import spanledger.job.source.Quoted;
import spanledger.memberdesign.MemberPick;
import spanledger.resistance.member.MemberSections;
import spanledger.section.Section;
import spanledger.section.plate.Plate;
import spanledger.tables.NearMiss;

/** Decodes lists of member names with * for any characters. */
final class MemberPickDecoder {

  /** How far a place may lie beyond an end, mm: that of geometry in job files. */
  private static final double END_TOLERANCE = 1.0;

  private final Reading reading;
  private final Set<String> names = new TreeSet<>();
  private final Set<String> openMakers;
  private final List<Member> members;

  MemberPickDecoder(Reading reading, Names<Member> members) {
    this.reading = reading;
    this.members = members.usable();
    openMakers = members.openMakers();
    members.entries().forEach(entry -> names.add(entry.key()));
  }

  /** The members that the object names; a name that fits none is reported. */
  Optional<MemberPick> decode(Fields fields) {
    List<String> found = new ArrayList<>();
    boolean sound = true;
    for (Located name : fields.requireList("members")) {
      if (name instanceof LocatedText text) {
        found.add(text.text());
        sound &= fits(text);
      } else {
        reading.gap(name.pointer());
        sound = false;
      }
    }
    return sound && !found.isEmpty() ? Optional.of(new MemberPick(found)) : Optional.empty();
  }

  /** Whether a place, mm from the start, lies on every picked member; reports the first missed. */
  boolean reach(MemberPick pick, double place, Located where) {
    for (Member member : members) {
      if (pick.picks(member) && place > member.length() + END_TOLERANCE) {
        reading.error(
            where,
            "a place beyond the end of member " + Quoted.text(member.name()),
            "at most its length, " + Math.round(member.length()) + " mm from its start",
            "correct the place, or name only the members that have it");
        return false;
      }
    }
    return true;
  }

  /** Whether a wall of every picked member that has it is wider than a hole; reports the first. */
  boolean isWide(MemberPick pick, String wall, double diameter, Located where) {
    Set<Section> seen = new HashSet<>();
    for (Member member : members) {
      if (pick.picks(member) && seen.add(member.section())) {
        Optional<Plate> plate =
            MemberSections.of(member.section()).flatMap(section -> section.wall(wall));
        double width = plate.map(Plate::width).orElse(Double.POSITIVE_INFINITY);
        if (diameter >= width) {
          reading.error(
              where,
              "a hole no narrower than wall "
                  + Quoted.text(wall)
                  + " of member "
                  + Quoted.text(member.name()),
              "a hole that leaves metal beside it: less than " + Lengths.words(width),
              "correct the diameter or the wall, or name only the members that have it");
          return false;
        }
      }
    }
    return true;
  }

  private boolean fits(LocatedText text) {
    if (names.stream().anyMatch(name -> MemberPick.matches(text.text(), name))) {
      return true;
    }
    if (mayBeMade(text.text())) {
      return false;
    }
    reading.error(
        text,
        Quoted.text(text.text()) + ", which fits no member",
        "the name of a member, or of several with * for any characters",
        NearMiss.of(text.text(), names)
            .map(near -> "did you mean " + Quoted.text(near) + "?")
            .orElse("correct the name, or remove it"));
    return false;
  }

  /** Whether a part of the assembly that has faults, reported there, may make such a member. */
  private boolean mayBeMade(String name) {
    int end = name.indexOf('/');
    return end < 0
        ? name.contains("*") && !openMakers.isEmpty()
        : openMakers.stream().anyMatch(maker -> MemberPick.matches(name.substring(0, end), maker));
  }
}
