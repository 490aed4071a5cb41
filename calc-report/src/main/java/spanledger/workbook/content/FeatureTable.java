package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import spanledger.provenance.Source;
import spanledger.section.feature.Feature;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;

/** The named places for joints with the sizes measured on the outline. */
final class FeatureTable {

  private FeatureTable() {}

  static DataTable of(List<Feature> features, Source outline) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (Feature feature : features) {
      feature
          .sizes()
          .forEach(
              (size, value) ->
                  rows.add(
                      List.of(
                          LedgerCell.blank(),
                          LedgerCell.text(feature.name() + ", " + feature.kind()),
                          LedgerCell.given(value),
                          LedgerCell.text("mm"),
                          LedgerCell.blank(),
                          LedgerCell.text(
                              size.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT)),
                          LedgerCell.text("measured on the outline: " + outline.citation()))));
    }
    return new DataTable(
        "Features for joints",
        List.of(
            Column.text("", 8),
            Column.text("feature", 30),
            Column.mixed("size", ""),
            Column.text("unit", 12),
            Column.text(" ", 12),
            Column.text("what", 34),
            Column.wrapped(DataTable.SOURCE_HEADING, 44)),
        rows);
  }
}
