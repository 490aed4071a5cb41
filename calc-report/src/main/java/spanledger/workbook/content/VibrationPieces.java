package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import spanledger.analysis.BarInertia;
import spanledger.analysis.SegmentStiffness;
import spanledger.frame.DividedFrame;
import spanledger.frame.Frame;
import spanledger.frame.MemberRole;
import spanledger.frame.Segment;
import spanledger.frame.Vector;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.Entry;
import spanledger.workbook.layout.EntryCells;
import spanledger.workbook.layout.EntryList;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.ProcedureTable;

/**
 * The pieces into which segments are cut to vibrate: place, stiffness, inertia about their axes.
 */
final class VibrationPieces implements SegmentNumbers {

  private static final String RIGID = "rigid";
  private static final String NO_SPRING = "spring of what is rigid";
  private static final String PIECES = "pieces per segment";
  private static final String LENGTH = "L";
  private static final String FLOOR = "o";
  private static final List<String> ARMS = List.of("a_X1", "a_Y1", "a_Z1", "a_X2", "a_Y2", "a_Z2");
  private static final Source SHORT =
      Source.declared("frequencies err by less than 0.5 % with pieces so short");
  private static final Source GOES_ON = Source.declared("the member goes on between its nodes");
  private static final Source NONE = Source.declared("0 between the nodes: the member goes on");

  private final LedgerSheet sheet;
  private final DividedFrame divided;
  private final SegmentSheets segments;
  private final DataCells places;
  private final ProcedureCells stiffness;
  private final ProcedureCells bars;

  VibrationPieces(
      LedgerSheet sheet, DividedFrame divided, SegmentSheets segments, SectionSheet sections) {
    this.sheet = sheet;
    this.divided = divided;
    this.segments = segments;
    EntryCells constants = writeConstants();
    places = writePlaces(constants.number(PIECES));
    stiffness = writeStiffness(constants.number(RIGID), constants.number(NO_SPRING));
    bars = writeBars(sections);
  }

  private EntryCells writeConstants() {
    return sheet.add(
        new EntryList(
            "",
            List.of(
                Entry.given(PIECES, "n", divided.pieces(), Dimension.NONE, SHORT),
                Entry.given(RIGID, "r", 1, Dimension.NONE, GOES_ON),
                Entry.given(NO_SPRING, "k", 0, Dimension.NONE, GOES_ON))));
  }

  private DataCells writePlaces(NumberAt pieces) {
    List<Column> columns =
        new ArrayList<>(
            List.of(
                Column.text("piece", 34),
                Column.number(LENGTH, "length", Dimension.LENGTH),
                Column.number("x_1", "begins from the segment's start", Dimension.LENGTH)
                    .withSource(NONE),
                Column.number("x_2", "ends", Dimension.LENGTH)));
    for (String arm : ARMS) {
      columns.add(Column.number(arm, "arm", Dimension.LENGTH).withSource(NONE));
    }
    columns.add(
        Column.number(FLOOR, "1 for members of a floor", Dimension.NONE)
            .withSource(Source.declared("role of the member")));
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (Segment piece : frame().segments()) {
      rows.add(placeRow(piece, pieces));
    }
    return sheet.add(new DataTable("Pieces", columns, rows));
  }

  private List<LedgerCell> placeRow(Segment piece, NumberAt pieces) {
    NumberAt whole = segments.geometry(whole(piece), LENGTH);
    double length = whole.value() / pieces.value();
    int which = piece.index() % divided.pieces();
    List<LedgerCell> row = new ArrayList<>();
    row.add(LedgerCell.text(piece.name()));
    row.add(LedgerCell.live(whole.from(sheet.name()) + "/" + pieces.from(sheet.name()), length));
    row.add(which == 0 ? LedgerCell.given(0) : LedgerCell.live(which + "*{L}", which * length));
    row.add(LedgerCell.live("{x_1}+{L}", which * length + length));
    for (String arm : ARMS) {
      boolean own = isOfSegment(piece, arm.charAt(3) - '0') && hasArm(piece, arm.charAt(3) - '0');
      row.add(own ? LedgerCell.linked(segments.geometry(whole(piece), arm)) : LedgerCell.given(0));
    }
    row.add(LedgerCell.given(piece.member().role() == MemberRole.FLOOR ? 1 : 0));
    return row;
  }

  private static boolean hasArm(Segment piece, int end) {
    return !(end == 1 ? piece.start() : piece.end()).offset().equals(Vector.ZERO);
  }

  /** Whether an end of a piece is an end of the segment. */
  private boolean isOfSegment(Segment piece, int end) {
    int which = piece.index() % divided.pieces();
    return which == (end == 1 ? 0 : divided.pieces() - 1);
  }

  private ProcedureCells writeStiffness(NumberAt rigid, NumberAt noSpring) {
    CompiledProcedure procedure = SegmentStiffness.PROCEDURE.compile();
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (Segment piece : frame().segments()) {
      rows.add(
          new ProcedureTable.Row(
              List.of(piece.name()),
              Inputs.of(procedure, symbol -> stiffnessInput(piece, symbol, rigid, noSpring))));
    }
    return sheet.add(new ProcedureTable("Stiffness of the pieces", procedure, labels(), rows));
  }

  private InputCell stiffnessInput(
      Segment piece, String symbol, NumberAt rigid, NumberAt noSpring) {
    if (symbol.equals(LENGTH)) {
      return InputCell.inline(geometry(piece, symbol));
    }
    boolean holds = symbol.startsWith("r_") || symbol.startsWith("k_");
    if (!holds) {
      return InputCell.inline(segments.stiffness(whole(piece), symbol));
    }
    return InputCell.shown(
        isOfSegment(piece, symbol.charAt(3) - '0')
            ? segments.stiffness(whole(piece), symbol)
            : symbol.startsWith("r_") ? rigid : noSpring);
  }

  private ProcedureCells writeBars(SectionSheet sections) {
    CompiledProcedure procedure = BarInertia.PROCEDURE.compile();
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (Segment piece : frame().segments()) {
      rows.add(
          new ProcedureTable.Row(
              List.of(piece.name()),
              Inputs.of(
                  procedure,
                  symbol ->
                      switch (symbol) {
                        case LENGTH -> InputCell.inline(geometry(piece, symbol));
                        case "ρ" -> InputCell.shown(sections.alloy(piece.member().alloy(), symbol));
                        default -> InputCell.inline(stiffness(piece, symbol));
                      })));
    }
    return sheet.add(
        new ProcedureTable("Inertia about the axes of the pieces", procedure, labels(), rows));
  }

  private static List<ProcedureTable.Label> labels() {
    return List.of(new ProcedureTable.Label("piece", 34));
  }

  private Segment whole(Segment piece) {
    return segments.frame().segments().get(piece.index() / divided.pieces());
  }

  @Override
  public Frame frame() {
    return divided.frame();
  }

  @Override
  public NumberAt geometry(Segment piece, String symbol) {
    return symbol.equals(LENGTH) || ARMS.contains(symbol)
        ? places.number(piece.index(), symbol)
        : segments.geometry(whole(piece), symbol);
  }

  @Override
  public NumberAt stiffness(Segment piece, String symbol) {
    return stiffness.number(piece.index(), symbol);
  }

  /** Where a piece begins (x_1) and ends (x_2). */
  NumberAt place(Segment piece, String symbol) {
    return places.number(piece.index(), symbol);
  }

  /** Whether the piece is of a floor, 1 or 0. */
  NumberAt floor(Segment piece) {
    return places.number(piece.index(), FLOOR);
  }

  /** A number of {@link BarInertia}. */
  NumberAt bar(Segment piece, String symbol) {
    return bars.number(piece.index(), symbol);
  }

  /** The tables in the order of the calculation. */
  List<ProcedureCells> tables() {
    return List.of(stiffness, bars);
  }
}
