package spanledger.picture.structure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import spanledger.frame.Member;

/**
 * Names to write beside members. Where there are many members, pieces of one part share its name
 * ({@code floor1/edge-north} for its bays), and parts that differ in a number share a row ({@code
 * floor1/bearer1 to 8}).
 */
final class PartNames {

  /** Up to this many members are named one by one. */
  private static final int ONE_BY_ONE = 24;

  private static final Pattern NUMBERED = Pattern.compile("(.*?)([0-9]+)");

  private PartNames() {}

  /**
   * A name and the members that go by it.
   *
   * @param words the name
   * @param members at least one
   */
  record Named(String words, List<Member> members) {
    Named {
      members = List.copyOf(members);
    }
  }

  /** Names for all members, in the order of the first member of each. */
  static List<Named> of(List<Member> members) {
    return members.size() <= ONE_BY_ONE
        ? members.stream().map(m -> new Named(m.name(), List.of(m))).toList()
        : rows(members);
  }

  /** Names of parts and rows of parts, however few there are. */
  static List<Named> rows(List<Member> members) {
    Map<String, List<Member>> parts = new LinkedHashMap<>();
    for (Member member : members) {
      parts.computeIfAbsent(part(member.name()), name -> new ArrayList<>()).add(member);
    }
    Map<String, List<String>> rows = new LinkedHashMap<>();
    for (String part : parts.keySet()) {
      Matcher numbered = NUMBERED.matcher(part);
      String row = numbered.matches() ? numbered.group(1) : part;
      rows.computeIfAbsent(row, name -> new ArrayList<>()).add(part);
    }
    List<Named> named = new ArrayList<>();
    for (List<String> row : rows.values()) {
      List<Member> all = new ArrayList<>();
      row.forEach(part -> all.addAll(parts.getOrDefault(part, List.of())));
      named.add(new Named(words(row), all));
    }
    return named;
  }

  /** The part that a generated piece belongs to: its name without what follows a second slash. */
  private static String part(String name) {
    int first = name.indexOf('/');
    int second = first < 0 ? -1 : name.indexOf('/', first + 1);
    return second < 0 ? name : name.substring(0, second);
  }

  private static String words(List<String> row) {
    String first = row.get(0);
    if (row.size() == 1) {
      return first;
    }
    Matcher last = NUMBERED.matcher(row.get(row.size() - 1));
    return last.matches() ? first + (row.size() == 2 ? " and " : " to ") + last.group(2) : first;
  }
}
