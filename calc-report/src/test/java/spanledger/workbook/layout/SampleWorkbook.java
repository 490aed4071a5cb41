package spanledger.workbook.layout;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javax.imageio.ImageIO;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** A small workbook with one of each block, about an invented citrus packing house. */
final class SampleWorkbook {

  static final WorkbookIdentity IDENTITY =
      new WorkbookIdentity(
          "12 bays & stair, citrus packing house",
          "Proof of a sorting-line platform",
          LocalDate.of(2026, 3, 2),
          "0123456789abcdef");

  private static final Source INVENTED =
      new Source("Demonstration job", "sections", spanledger.provenance.Confidence.INVENTED);

  private final LedgerWorkbook book;
  private final int cases;

  DataCells sections;
  EntryCells factors;
  ProcedureCells members;
  CellAddress driver;
  CalculationCells calculation;
  DataCells balance;

  SampleWorkbook(LedgerWorkbook book, int cases) {
    this.book = book;
    this.cases = cases;
    basis();
    factors();
    sections();
    members();
    worked();
    calculation();
    balance();
  }

  private void basis() {
    LedgerSheet sheet = book.sheet("Basis");
    sheet.title(IDENTITY.title(), "What was calculated, for whom, and what it does not cover");
    sheet.add(
        new Caution(
            List.of(
                "Anchors into the floor are outside this calculation; their forces are"
                    + " handed on.")));
    sheet.add(
        new EntryList(
            "Job",
            List.of(
                Entry.text("Job", IDENTITY.job()),
                Entry.text("Method", "Second-order elastic frame analysis, elastic resistances"),
                Entry.text("Remark", "=1+1 is text here and stays text"))));
    sheet.note(
        "The sheets follow each other in the order in which one audits them: first what was given,"
            + " then what was found, then what was checked. Every number is given with its source,"
            + " or a live formula, or a value of the solver that residuals prove.");
    sheet.add(new Legend());
    sheet.picture(elevation(), "Elevation of the platform with three bays and a stair", 90);
    sheet.add(new SignOff());
  }

  private void factors() {
    LedgerSheet sheet = book.sheet("Materials");
    sheet.title("Materials", "Strengths and partial factors");
    factors =
        sheet.add(
            new EntryList(
                "Alloy 6082-T6, extruded",
                List.of(
                    Entry.given(
                        "proof strength",
                        "f_o",
                        250,
                        Dimension.STRESS,
                        Source.fromMemory("EN 1999-1-1:2007", "Table 3.2b")),
                    Entry.given(
                        "partial factor",
                        "γ_M1",
                        1.1,
                        Dimension.NONE,
                        Source.fromMemory("EN 1999-1-1:2007", "6.1.3, Table 6.1")))));
    book.name("sl_gamma_M1", factors.number("partial factor").at());
    book.name("sl_f_o", factors.number("proof strength").at());
  }

  private void sections() {
    LedgerSheet sheet = book.sheet("Sections");
    sheet.title("Sections", "Properties of the extrusions");
    List<List<LedgerCell>> rows = new ArrayList<>();
    double[][] data = {{1240, 61200, 480}, {980, 40100, 410}, {2110.5, 148300, 890}};
    for (int i = 0; i < data.length; i++) {
      rows.add(
          List.of(
              LedgerCell.text("Beam " + (char) ('A' + i)),
              LedgerCell.given(data[i][0]),
              LedgerCell.given(data[i][1]),
              LedgerCell.given(data[i][2]),
              LedgerCell.live("{A_τ_z}/{A}", data[i][2] / data[i][0])));
    }
    sections =
        sheet.add(
            new DataTable(
                "Extrusions",
                List.of(
                    Column.text("section", 16),
                    Column.number("A", "area", Dimension.AREA).withSource(INVENTED),
                    Column.number("W_el_y", "elastic modulus about y", Dimension.SECTION_MODULUS)
                        .withSource(INVENTED),
                    Column.number("A_τ_z", "area for peak shear along z", Dimension.AREA)
                        .withSource(INVENTED),
                    Column.number("A_τ_z/A", "share of the area", Dimension.NONE)),
                rows));
    book.name("sl_sections_A", sections.column("A"));
  }

  private void members() {
    Random random = new Random(7);
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (int i = 0; i < cases; i++) {
      int section = i % 3;
      rows.add(
          new ProcedureTable.Row(
              List.of("Beam " + (i / 4 + 1), "ULS " + (i % 4 + 1) + ", at x = " + 250 * (i % 9)),
              List.of(
                  InputCell.solved(-9000 * random.nextDouble(), "End forces"),
                  InputCell.literal(
                      4000 * random.nextDouble(),
                      i % 5 == 0 ? INVENTED : Source.declared("job, /loads/3")),
                  InputCell.live(1e6 + "*" + (i + 1), 1e6 * (i + 1), "grows with the row"),
                  InputCell.inline(sections.number(section, "A")),
                  InputCell.inline(sections.number(section, "W_el_y")),
                  InputCell.shown(sections.number(section, "A_τ_z")),
                  InputCell.inline(factors.number("proof strength")),
                  InputCell.inline(factors.number("partial factor")))));
    }
    LedgerSheet sheet = book.sheet("Member stresses");
    sheet.title("Member stresses", "A row per member, combination and cut; a column per step");
    CompiledProcedure compiled = SampleProcedure.STRESS.compile();
    members =
        sheet.add(
            new ProcedureTable(
                    "",
                    compiled,
                    List.of(
                        new ProcedureTable.Label("member", 11),
                        new ProcedureTable.Label("combination", 18)),
                    rows)
                .judgedBy("u"));
  }

  private void worked() {
    LedgerSheet sheet = book.sheet("Member worked");
    sheet.title("Member stresses, one row in full", "Choose the row in the thick box");
    driver = sheet.add(new WorkedPage(members, Math.min(7, cases - 1)));
  }

  private void calculation() {
    LedgerSheet sheet = book.sheet("One calculation");
    sheet.title("Stresses at the stair stringer", "A procedure with a single case");
    calculation =
        sheet.add(
            new Calculation(
                "Stringer",
                SampleProcedure.STRESS.compile(),
                List.of(
                    InputCell.literal(-1200, INVENTED),
                    InputCell.literal(2100, INVENTED),
                    InputCell.literal(2.4e6, INVENTED),
                    InputCell.shown(sections.number(2, "A")),
                    InputCell.shown(sections.number(2, "W_el_y")),
                    InputCell.shown(sections.number(2, "A_τ_z")),
                    InputCell.shown(factors.number("proof strength")),
                    InputCell.shown(factors.number("partial factor")))));
  }

  private void balance() {
    LedgerSheet sheet = book.sheet("Balance");
    sheet.title("Balance of forces", "Loads and reactions at the nodes");
    balance =
        sheet.add(
            new DataTable(
                "Nodes",
                List.of(
                    Column.text("node", 10),
                    Column.number("F", "load", Dimension.FORCE).withSource(INVENTED),
                    Column.number("R", "reaction", Dimension.FORCE),
                    Column.number("r", "left over", Dimension.FORCE),
                    Column.text("verdict", 17),
                    Column.wrapped("remark", 44)),
                List.of(
                    List.of(
                        LedgerCell.text("K1"),
                        LedgerCell.given(1250.5),
                        LedgerCell.solved(-1250.4999999),
                        LedgerCell.residual("{F}+{R}", 1250.5 - 1250.4999999),
                        LedgerCell.judged(
                            "ABS({r})<=0.001", true, Outcome.BALANCED, Outcome.NOT_BALANCED),
                        LedgerCell.text("@SUM(A1) is text, and so is -1; _x0041_ too")),
                    List.of(
                        LedgerCell.text("K2"),
                        LedgerCell.given(0),
                        LedgerCell.solved(3),
                        LedgerCell.residual("{F}+{R}", 3),
                        LedgerCell.judged(
                            "ABS({r})<=0.001", false, Outcome.BALANCED, Outcome.NOT_BALANCED),
                        LedgerCell.blank()),
                    List.of(
                        LedgerCell.text("K3"),
                        LedgerCell.blank(),
                        LedgerCell.blank(),
                        LedgerCell.blank(),
                        LedgerCell.judged(Outcome.NOT_CHECKED),
                        LedgerCell.text("The anchor is outside of this calculation.")))));
  }

  private static byte[] elevation() {
    BufferedImage image = new BufferedImage(900, 220, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, 900, 220);
    g.setColor(Color.DARK_GRAY);
    g.fillRect(40, 60, 620, 12);
    for (int x = 40; x <= 660; x += 206) {
      g.fillRect(x, 60, 8, 140);
    }
    g.drawLine(660, 66, 860, 200);
    g.dispose();
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, "png", png);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return png.toByteArray();
  }
}
