package spanledger.workbook.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.poi.ss.usermodel.ComparisonOperator;
import org.apache.poi.ss.usermodel.ConditionalFormattingRule;
import org.apache.poi.ss.usermodel.PatternFormatting;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFConditionalFormattingRule;
import org.apache.poi.xssf.usermodel.XSSFFontFormatting;
import org.apache.poi.xssf.usermodel.XSSFPatternFormatting;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFSheetConditionalFormatting;

/**
 * Marks judgements by what they say, so that a mark follows when a live judgement changes: what is
 * bad stands white on dark, what is open bold on light.
 */
final class JudgementMarks {

  /** Cells below each other are kept as one range, for tables may have thousands of rows. */
  private final SortedMap<Integer, List<CellRangeAddress>> cells = new TreeMap<>();

  void add(int firstRow, int lastRow, int column) {
    List<CellRangeAddress> ranges = cells.computeIfAbsent(column, c -> new ArrayList<>());
    CellRangeAddress last = ranges.isEmpty() ? null : ranges.get(ranges.size() - 1);
    if (last != null && last.getLastRow() == firstRow - 1) {
      last.setLastRow(lastRow);
    } else {
      ranges.add(new CellRangeAddress(firstRow, lastRow, column, column));
    }
  }

  void mark(XSSFSheet sheet) {
    if (cells.isEmpty()) {
      return;
    }
    XSSFSheetConditionalFormatting formatting = sheet.getSheetConditionalFormatting();
    CellRangeAddress[] ranges =
        cells.values().stream().flatMap(List::stream).toArray(CellRangeAddress[]::new);
    for (Outcome outcome : Outcome.values()) {
      if (outcome.tone() == Outcome.Tone.BAD) {
        formatting.addConditionalFormatting(
            ranges, rule(formatting, outcome, Colour.PAPER, Colour.BAD_FILL));
      } else if (outcome.tone() == Outcome.Tone.OPEN) {
        formatting.addConditionalFormatting(
            ranges, rule(formatting, outcome, Colour.INK, Colour.OPEN_FILL));
      }
    }
  }

  private static ConditionalFormattingRule rule(
      XSSFSheetConditionalFormatting formatting, Outcome outcome, Colour ink, Colour fill) {
    XSSFConditionalFormattingRule rule =
        formatting.createConditionalFormattingRule(
            ComparisonOperator.EQUAL, "\"" + outcome.words() + "\"");
    XSSFFontFormatting font = rule.createFontFormatting();
    font.setFontStyle(false, true);
    font.setFontColor(ink.color());
    XSSFPatternFormatting pattern = rule.createPatternFormatting();
    // In a conditional format a solid pattern shows its background colour.
    pattern.setFillBackgroundColor(fill.color());
    pattern.setFillPattern(PatternFormatting.SOLID_FOREGROUND);
    return rule;
  }
}
