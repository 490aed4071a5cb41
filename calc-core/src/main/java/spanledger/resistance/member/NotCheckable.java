package spanledger.resistance.member;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A member that a code cannot judge. Such a member is never passed; its verdict is {@code not
 * checked} with {@link #words}.
 *
 * @param member the case
 * @param lacks everything that is missing, at least one
 */
public record NotCheckable(MemberCase member, List<Lack> lacks) implements Preparation {

  /**
   * Something that is missing.
   *
   * @param found what stands in the way, for example {@code plate P3 of section S is unsure,
   *     because ...}
   * @param add what to add to the job
   */
  public record Lack(String found, String add) {}

  public NotCheckable {
    lacks = List.copyOf(lacks);
    if (lacks.isEmpty()) {
      throw new IllegalArgumentException("A member that lacks nothing can be checked.");
    }
  }

  /** What stands in the way and what to do, in one line. */
  public String words() {
    return lacks.stream()
        .map(lack -> lack.found() + "; " + lack.add())
        .collect(Collectors.joining(". "));
  }
}
