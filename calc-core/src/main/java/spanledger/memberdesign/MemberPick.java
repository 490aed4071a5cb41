package spanledger.memberdesign;

import java.util.List;
import java.util.regex.Pattern;
import spanledger.frame.Member;

/**
 * Picks members by name.
 *
 * @param names names, in which {@code *} stands for any characters
 */
public record MemberPick(List<String> names) {

  public MemberPick {
    names = List.copyOf(names);
  }

  /** Every member. */
  public static MemberPick all() {
    return new MemberPick(List.of("*"));
  }

  /** Whether it picks that member. */
  public boolean picks(Member member) {
    return picks(member.name());
  }

  /** Whether it picks a member of that name. */
  public boolean picks(String member) {
    return names.stream().anyMatch(name -> matches(name, member));
  }

  /** Whether one name, in which {@code *} stands for any characters, fits a member's name. */
  public static boolean matches(String name, String member) {
    String[] parts = name.split("\\*", -1);
    StringBuilder pattern = new StringBuilder();
    for (int i = 0; i < parts.length; i++) {
      pattern.append(i == 0 ? "" : ".*").append(Pattern.quote(parts[i]));
    }
    return Pattern.matches(pattern.toString(), member);
  }
}
