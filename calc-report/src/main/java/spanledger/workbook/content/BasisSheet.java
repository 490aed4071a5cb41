package spanledger.workbook.content;

import java.util.List;
import spanledger.job.Job;
import spanledger.job.JobTitle;
import spanledger.workbook.layout.Caution;
import spanledger.workbook.layout.Entry;
import spanledger.workbook.layout.EntryList;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.Legend;
import spanledger.workbook.layout.SignOff;

/** What the calculation is of, what it rests on, and how to read it. */
final class BasisSheet {

  private BasisSheet() {}

  static void write(LedgerWorkbook workbook, Job job) {
    JobTitle title = job.title();
    LedgerSheet sheet = workbook.sheet(SheetNames.BASIS);
    sheet.title(title.title(), "Structural calculation of an aluminium access structure");
    sheet.add(
        new Caution(
            List.of(
                "Figures marked 'from memory' must be confirmed against the standard before anyone"
                    + " relies on them; the sheet Sources lists them.",
                "What is not checked stands first on the sheet Summary.")));
    sheet.add(
        new EntryList(
            "Job",
            List.of(
                Entry.text("reference", title.reference()),
                Entry.text("client", title.client()),
                Entry.text("engineer", title.engineer()),
                Entry.text("date", title.date().toString()),
                Entry.text("rule set", job.rules().id() + ": " + job.rules().title()),
                Entry.text(
                    "combinations", job.combinations().id() + ": " + job.combinations().title()),
                Entry.text(
                    "springs given by bounds", "taken at the " + job.bound().words() + " one"),
                Entry.text("second order", job.analysis().secondOrder().words()),
                Entry.text("job file, SHA-256", job.sha256()))));
    for (String note : title.notes()) {
      sheet.note(note);
    }
    sheet.heading("What the calculation rests on");
    for (String assumption : ASSUMPTIONS) {
      sheet.note(assumption);
    }
    sheet.heading("How to audit it");
    for (String step : AUDIT) {
      sheet.note(step);
    }
    sheet.heading("What is printed");
    PRINTED.forEach(sheet::note);
    sheet.add(new Legend());
    sheet.add(new SignOff());
  }

  private static final List<String> ASSUMPTIONS =
      List.of(
          "Core units throughout: N, mm, MPa, rad, kg. Global axes: X and Y level, Z up.",
          "Members are judged by first-order linear analysis of straight members that deform in bending, shear, torsion and"
              + " along their axis; shear centre and centroid taken to coincide; no warping.",
          "Deck panels span simply from member to member; overhangs by the lever rule.",
          "Imposed area load acts on all floors, on each alone, and on each two neighbours. Point loads"
              + " on floors and rails are tried everywhere and stand where they are worst. Guardrail"
              + " loads act one at a time.",
          "Stresses are elastic; the largest normal stress and the largest shear stress of a section are"
              + " taken to meet. Walls beyond class 3 make the check NOT CHECKED.",
          "Notional level forces act with permanent and area loads, both ways along X and Y; loads"
              + " given in a segment's own axes bring none.");

  private static final List<String> PRINTED =
      List.of(
          "Print the whole workbook. Inputs with their sources, summary, pictures, worked pages and demands"
              + " come whole. Of sheets with thousands of rows comes one page: the head with its formulas"
              + " and sources and the first rows; of Balance sheets the totals; of the long tables between"
              + " inputs and results nothing. What is not printed whole says \"in part\" at its top.",
          "To print more of a sheet, change or clear its print area in the spreadsheet program. To print"
              + " another row in full, choose it on Worked page.");

  private static final List<String> AUDIT =
      List.of(
          "1. Inputs: compare Figures, Nodes and supports, Sections and alloys with drawings and"
              + " standards.",
          "2. Mechanics: Segments and Stiffness follow from them by formula.",
          "3. Loads: every load's size is a formula or a given number with its source.",
          "4. Movements are the only numbers the solver gives. Deformations, End forces and Node forces"
              + " follow from them by formula, and Balance shows that nothing is left over at any node:"
              + " so the movements are the solution.",
          "5. Cuts, Member strength, Deflection and Support reactions follow by formula; Worked page"
              + " shows any row in full.",
          "6. The places of cuts and of moving loads were found by search. A cut can be tested here: change"
              + " its place on the sheet Loads before cuts and watch the utilisation. So can a factor, a"
              + " limit or a strength. A load or a dimension cannot: the movements would no longer belong to"
              + " it, and Balance says so. Change it in the job file and run again.");
}
