package spanledger.parts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.MemberRole;
import spanledger.material.Alloy;
import spanledger.section.Section;

/**
 * The pieces of a frame, those that are cut alike together. Lengths are between centre lines: what
 * a joint takes off or adds is not in them. Decking, brackets and bolts are not members and not
 * here.
 *
 * @param pieces by section, alloy and role, the longest first
 */
public record PieceList(List<Piece> pieces) {

  /** Lengths are told apart by this, mm. */
  private static final double STEP = 0.1;

  public PieceList {
    pieces = List.copyOf(pieces);
  }

  /**
   * Pieces that are cut alike.
   *
   * @param section their section
   * @param alloy their alloy
   * @param role what they are for
   * @param length of one, mm
   * @param members the members that they are
   */
  public record Piece(
      Section section, Alloy alloy, MemberRole role, double length, List<String> members) {
    public Piece {
      members = List.copyOf(members);
    }

    /** How many there are. */
    public int count() {
      return members.size();
    }

    /** The mass of one, kg. */
    public double mass() {
      return PieceMass.one(section.properties().area(), alloy.density(), length);
    }
  }

  private record Kind(String section, String alloy, MemberRole role, long tenths) {}

  /** The pieces of a frame. */
  public static PieceList of(Frame frame) {
    Map<Kind, List<Member>> alike = new LinkedHashMap<>();
    for (Member member : frame.members()) {
      Kind kind =
          new Kind(
              member.section().name(),
              member.alloy().designation(),
              member.role(),
              Math.round(member.length() / STEP));
      alike.computeIfAbsent(kind, k -> new ArrayList<>()).add(member);
    }
    List<Piece> pieces = new ArrayList<>();
    for (List<Member> same : alike.values()) {
      Member first = same.get(0);
      pieces.add(
          new Piece(
              first.section(),
              first.alloy(),
              first.role(),
              first.length(),
              same.stream().map(Member::name).toList()));
    }
    pieces.sort(
        Comparator.comparing((Piece piece) -> piece.section().name())
            .thenComparing(piece -> piece.alloy().designation())
            .thenComparing(Piece::role)
            .thenComparing(Comparator.comparingDouble(Piece::length).reversed()));
    return new PieceList(pieces);
  }

  /** The mass of all pieces, kg. */
  public double mass() {
    return pieces.stream().mapToDouble(piece -> piece.mass() * piece.count()).sum();
  }

  /** The heaviest single piece. */
  public Optional<Piece> heaviest() {
    return pieces.stream().max(Comparator.comparingDouble(Piece::mass));
  }
}
