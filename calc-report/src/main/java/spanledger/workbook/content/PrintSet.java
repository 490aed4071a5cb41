package spanledger.workbook.content;

import java.util.Set;
import java.util.regex.Pattern;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;

/**
 * What of a workbook is printed. Sheets that a certifier reads from top to bottom are printed
 * whole; of those with thousands of rows one page: the head of the sheet with formulas, sources and
 * first rows, or its totals; of long tables between inputs and results nothing.
 */
public final class PrintSet {

  private static final Set<String> WHOLE =
      Set.of(
          SheetNames.BASIS,
          SheetNames.SUMMARY,
          SheetNames.PICTURES,
          SheetNames.FIGURES,
          SheetNames.NODES,
          SheetNames.JOINT_INPUTS,
          SheetNames.GUARDRAIL,
          SheetNames.VIBRATION,
          SheetNames.WHOLE,
          SheetNames.ROBUSTNESS,
          SheetNames.SUPPORTS,
          SheetNames.FLIGHTS,
          SheetNames.DECK,
          SheetNames.GEOMETRY,
          SheetNames.PIECES,
          SheetNames.WORKED,
          SheetNames.JOINTS);

  /** The worked pages of a kind of joint, which have its number. */
  private static final Pattern JOINT_PAGE = Pattern.compile("Joint [0-9]+ .*");

  /** Long tables between inputs and results, proved by the totals of Balance sheets. */
  private static final Set<String> BETWEEN =
      Set.of(
          SheetNames.LOAD_SUMS,
          SheetNames.MOVEMENTS,
          SheetNames.DEFORMATIONS,
          SheetNames.NODE_FORCES,
          SheetNames.CUT_LOADS,
          SheetNames.STATE_CUT_LOADS,
          SheetNames.JOINT_CHOICES,
          "Vibration pieces",
          "Vibration movements",
          "Vibration forces",
          "Critical mode",
          "Mode movements",
          "Influence proof",
          "Influence movements",
          "State loads",
          "State movements",
          "State deformations",
          "State stiffness",
          "State node forces");

  private PrintSet() {}

  /** Chooses what is printed of every sheet that does not say it itself. */
  public static void choose(LedgerWorkbook workbook) {
    for (LedgerSheet sheet : workbook.sheets()) {
      if (BETWEEN.contains(sheet.name())) {
        sheet.printNothing();
      } else if (sheet.name().equals(SheetNames.SECTIONS)) {
        // Given sizes and strengths stand on the left; what follows from them needs no paper.
        sheet.printLeftPage();
      } else if (!WHOLE.contains(sheet.name()) && !JOINT_PAGE.matcher(sheet.name()).matches()) {
        sheet.printFirstPage();
      }
    }
  }
}
