package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.frame.Member;
import spanledger.material.Alloy;
import spanledger.procedure.Input;
import spanledger.quantity.Dimension;
import spanledger.resistance.member.CutCheck;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.PreparedMember;
import spanledger.resistance.member.Working;
import spanledger.section.Section;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.NumberAt;

/**
 * Numbers that member checks are given: those of sections and alloys where they stand already, all
 * others once, with their sources.
 */
final class MemberNumbers {

  private static final String VALUE = "value";

  private final SectionSheet sections;
  private final Map<String, Section> bySection = new LinkedHashMap<>();
  private final Map<String, Alloy> byAlloy = new LinkedHashMap<>();
  private final Map<Feed.Given, Integer> rows = new LinkedHashMap<>();
  private final List<Dimension> dimensions = new ArrayList<>();
  private final DataCells cells;

  MemberNumbers(
      LedgerSheet sheet,
      List<MemberGroups.Group> groups,
      List<Member> members,
      SectionSheet sections) {
    this.sections = sections;
    for (Member member : members) {
      bySection.put(member.section().name(), member.section());
      byAlloy.put(member.alloy().designation(), member.alloy());
    }
    for (MemberGroups.Group group : groups) {
      collect(group.prepared());
    }
    cells = write(sheet);
  }

  private void collect(PreparedMember prepared) {
    for (Working working : prepared.workings()) {
      collect(working.procedure().procedure().inputs(), working.feeds());
    }
    for (CutCheck check : prepared.checks()) {
      collect(check.procedure().procedure().inputs(), check.feeds());
    }
  }

  private void collect(List<Input> inputs, List<Feed> feeds) {
    for (int i = 0; i < feeds.size(); i++) {
      if (feeds.get(i) instanceof Feed.Given given
          && standing(given).isEmpty()
          && rows.putIfAbsent(given, rows.size()) == null) {
        dimensions.add(inputs.get(i).symbol().dimension());
      }
    }
  }

  private DataCells write(LedgerSheet sheet) {
    List<List<LedgerCell>> table = new ArrayList<>();
    for (Feed.Given given : rows.keySet()) {
      table.add(
          List.of(
              LedgerCell.text(given.origin()),
              LedgerCell.given(given.value()),
              LedgerCell.text(dimensions.get(table.size()).coreUnit()),
              LedgerCell.text(given.source().citation()),
              LedgerCell.text(given.source().confidence().words())));
    }
    return sheet.add(
        new DataTable(
            "Numbers given to the member checks",
            List.of(
                Column.wrapped("what", 60),
                Column.mixed(VALUE, ""),
                Column.text("unit", 10),
                Column.wrapped(DataTable.SOURCE_HEADING, 50),
                Column.text("confidence", 36)),
            table));
  }

  /** The cell of a given number. */
  InputCell cell(Feed.Given given) {
    return InputCell.shown(
        standing(given)
            .orElseGet(() -> cells.number(Required.of(rows.get(given), given.origin()), VALUE)));
  }

  /** Where a number of a section or alloy stands already. */
  private Optional<NumberAt> standing(Feed.Given given) {
    int comma = given.origin().lastIndexOf(", ");
    if (comma < 0) {
      return Optional.empty();
    }
    String owner = given.origin().substring(0, comma);
    String symbol = given.origin().substring(comma + 2);
    if (owner.startsWith("alloy ")) {
      return Optional.ofNullable(byAlloy.get(owner.substring("alloy ".length())))
          .filter(alloy -> List.of("f_o", "f_u", "E", "G").contains(symbol))
          .map(alloy -> sections.alloy(alloy, symbol))
          .filter(number -> number.value() == given.value());
    }
    if (owner.startsWith("section ")) {
      return Optional.ofNullable(bySection.get(owner.substring("section ".length())))
          .flatMap(section -> property(section, symbol, given.value()));
    }
    return Optional.empty();
  }

  /** The property of that symbol, about whichever axis it is. */
  private Optional<NumberAt> property(Section section, String symbol, double value) {
    return List.of(symbol, symbol + "_y", symbol + "_z").stream()
        .flatMap(name -> sections.find(section, name).stream())
        .filter(number -> number.value() == value)
        .findFirst();
  }
}
