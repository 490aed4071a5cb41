package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Function;
import spanledger.action.LoadPath;
import spanledger.analysis.ChordDeflection;
import spanledger.analysis.LoadBefore;
import spanledger.analysis.LoadDirection;
import spanledger.analysis.LoadMoments;
import spanledger.envelope.Station;
import spanledger.frame.Segment;
import spanledger.frame.Vector;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.resistance.PointDisplacement;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.ProcedureTable;

/**
 * The ordinates of one influence line: how far each point of the path moves along the load when the
 * frame is moved by a unit of what works on the effect; on the cut segment also what the load does
 * while its ends are held.
 */
final class InfluenceOrdinates {

  private static final double[] QUARTERS = {0, 0.25, 0.5, 0.75};
  private static final double[] EIGHTHS = {0, 0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875};

  /** Points nearer to the worst place than this, mm, are left out. */
  private static final double NEAR = 1e-3;

  private static final Source CHOSEN = Source.derived("Chosen for the drawing");
  private static final Source DIRECTION = Source.declared("direction of the load");
  private static final Source WORST = Source.derived("Place found by search");

  /** A point of the path; x is from its segment's start. */
  private record Point(int lane, double x, boolean worst) {}

  private final LedgerSheet sheet;
  private final InfluencePick pick;
  private final InfluenceProof proof;
  private final SegmentSheets segments;
  private final List<Point> points;
  private final DataCells places;
  private final List<NumberAt> moved = new ArrayList<>();
  private final List<List<NumberAt>> own = new ArrayList<>();

  private InfluenceOrdinates(
      LedgerSheet sheet, InfluencePick pick, InfluenceProof proof, SegmentSheets segments) {
    this.sheet = sheet;
    this.pick = pick;
    this.proof = proof;
    this.segments = segments;
    this.points = points();
    this.places = writePlaces();
    writeMoved();
    writeOwn();
  }

  static InfluenceOrdinates write(
      LedgerSheet sheet, InfluencePick pick, InfluenceProof proof, SegmentSheets segments) {
    return new InfluenceOrdinates(sheet, pick, proof, segments);
  }

  private boolean isCut(Segment segment) {
    return proof.station().map(s -> s.segment().index() == segment.index()).orElse(false);
  }

  private List<Point> points() {
    List<Point> all = new ArrayList<>();
    LoadPath path = pick.path();
    double[] marks = path.marks();
    for (int i = 0; i < path.lanes().size(); i++) {
      LoadPath.Lane lane = path.lanes().get(i);
      double length = lane.segment().length();
      TreeSet<Double> along = new TreeSet<>();
      for (double part : isCut(lane.segment()) ? EIGHTHS : QUARTERS) {
        along.add(part * length);
      }
      if (isCut(lane.segment())) {
        double x = proof.station().map(Station::x).orElse(0.0);
        along.add(lane.forward() ? x : length - x);
      }
      if (i == path.lanes().size() - 1) {
        along.add(length);
      }
      double worst = pick.worst() - marks[i];
      boolean here =
          worst >= 0 && (worst < length || (i == path.lanes().size() - 1 && worst <= length));
      if (here) {
        along.removeIf(at -> Math.abs(at - worst) < NEAR);
        along.add(worst);
      }
      for (double at : along) {
        double x = lane.forward() ? at : length - at;
        all.add(new Point(i, Math.max(0, Math.min(length, x)), here && at == worst));
      }
    }
    return all;
  }

  private LoadPath.Lane lane(Point point) {
    return pick.path().lanes().get(point.lane());
  }

  private DataCells writePlaces() {
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (Point point : points) {
      LoadPath.Lane lane = lane(point);
      Sums along = new Sums(sheet.name());
      for (int i = 0; i < point.lane(); i++) {
        along.plus(segments.geometry(pick.path().lanes().get(i).segment(), "L"));
      }
      NumberAt length = segments.geometry(lane.segment(), "L");
      String before = along.isEmpty() ? "" : along.formula() + "+";
      double value = along.value() + (lane.forward() ? point.x() : length.value() - point.x());
      rows.add(
          List.of(
              LedgerCell.text(lane.segment().name()),
              LedgerCell.given(point.x()),
              LedgerCell.text(point.worst() ? WORST.citation() : CHOSEN.citation()),
              LedgerCell.live(
                  before + (lane.forward() ? "{x}" : length.from(sheet.name()) + "-{x}"), value)));
    }
    return sheet.add(
        new DataTable(
            "Points of the path",
            List.of(
                Column.text("segment", 34),
                Column.number("x", "from the segment's start", Dimension.LENGTH),
                Column.text(DataTable.SOURCE_HEADING, 24),
                Column.number("s", "along the path", Dimension.LENGTH)),
            rows));
  }

  private void writeMoved() {
    CompiledProcedure chord = ChordDeflection.PROCEDURE.compile();
    ProcedureCells chords =
        table(
            chord,
            all(),
            row -> symbol -> InputCell.inline(chordInput(points.get(row), row, symbol)));
    CompiledProcedure procedure = PointDisplacement.PROCEDURE.compile();
    ProcedureCells cells =
        table(procedure, all(), row -> symbol -> pointInput(points.get(row), chords, row, symbol));
    for (int i = 0; i < points.size(); i++) {
      moved.add(cells.number(i, "δ"));
    }
  }

  private List<Integer> all() {
    List<Integer> rows = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      rows.add(i);
    }
    return rows;
  }

  private ProcedureCells table(
      CompiledProcedure procedure,
      List<Integer> rows,
      Function<Integer, Function<String, InputCell>> inputs) {
    List<ProcedureTable.Row> table = new ArrayList<>();
    for (int row : rows) {
      table.add(
          new ProcedureTable.Row(
              List.of(lane(points.get(row)).segment().name()),
              Inputs.of(procedure, inputs.apply(row))));
    }
    return sheet.add(
        new ProcedureTable(
            procedure.procedure().title(),
            procedure,
            List.of(new ProcedureTable.Label("segment", 34)),
            table));
  }

  private NumberAt chordInput(Point point, int row, String symbol) {
    Segment segment = lane(point).segment();
    if (symbol.equals("x")) {
      return places.number(row, "x");
    } else if (symbol.startsWith("F_") || symbol.startsWith("M_")) {
      return proof.endForce(segment, symbol);
    } else if (symbol.startsWith("g_") || symbol.startsWith("m_")) {
      return proof.unit(0);
    } else if (symbol.equals("L")) {
      return segments.geometry(segment, symbol);
    }
    return segments.stiffness(segment, symbol);
  }

  private InputCell pointInput(Point point, ProcedureCells chords, int row, String symbol) {
    Segment segment = lane(point).segment();
    if (symbol.startsWith("D_")) {
      return InputCell.literal(part(lane(point).direction(), symbol), DIRECTION);
    } else if (symbol.equals("x")) {
      return InputCell.inline(places.number(row, "x"));
    } else if (symbol.equals("d_y") || symbol.equals("d_z")) {
      return InputCell.inline(chords.number(row, symbol));
    }
    return InputCell.inline(
        InfluenceProof.freedom(symbol)
            .map(
                freedom ->
                    proof.movement(
                        symbol.endsWith("1") ? segment.first() : segment.second(), freedom))
            .orElseGet(() -> segments.geometry(segment, symbol)));
  }

  private static double part(Vector direction, String symbol) {
    return switch (symbol.charAt(2)) {
      case 'X' -> direction.x();
      case 'Y' -> direction.y();
      default -> direction.z();
    };
  }

  /** What the load does on the cut segment while its ends are held. */
  private void writeOwn() {
    List<Integer> rows = all().stream().filter(i -> isCut(lane(points.get(i)).segment())).toList();
    for (int i = 0; i < points.size(); i++) {
      own.add(List.of());
    }
    if (rows.isEmpty()) {
      return;
    }
    Segment segment = lane(points.get(rows.get(0))).segment();
    Vector direction = lane(points.get(rows.get(0))).direction();
    ProcedureCells local =
        table(
            LoadDirection.PROCEDURE.compile(),
            rows.subList(0, 1),
            row ->
                symbol ->
                    symbol.startsWith("D_")
                        ? InputCell.literal(part(direction, symbol), DIRECTION)
                        : InputCell.inline(segments.geometry(segment, symbol)));
    Function<Integer, Function<String, InputCell>> load =
        row ->
            symbol ->
                InputCell.inline(
                    switch (symbol) {
                      case "P" -> proof.unit(1);
                      case "a" -> places.number(row, "x");
                      default -> proof.place();
                    });
    ProcedureCells moments = table(LoadMoments.POINT.compile(), rows, load);
    ProcedureCells before = table(LoadBefore.POINT.compile(), rows, load);
    List<CutEffect.Done> done = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      int row = i;
      done.add(
          new CutEffect.Done(
              "unit load, ends held",
              symbol -> InputCell.inline(proof.unit(0)),
              symbol -> InputCell.inline(proof.unit(0)),
              symbol -> along(local, moments.number(row, symbol.substring(0, 3)), symbol),
              symbol -> along(local, before.number(row, symbol.substring(0, 3)), symbol)));
    }
    List<NumberAt> effects =
        new CutEffect(sheet, segments, proof.place()).write(pick.effect(), done);
    for (int i = 0; i < rows.size(); i++) {
      own.set(rows.get(i), List.of(effects.get(i)));
    }
  }

  /** The part of a moment of the load along the axis that ends the symbol. */
  private InputCell along(ProcedureCells local, NumberAt moment, String symbol) {
    return new Sums(sheet.name())
        .plusProduct(local.number(0, "d_" + symbol.charAt(3)), moment)
        .input("its part along the axis");
  }

  /** How many points there are. */
  int count() {
    return points.size();
  }

  /** The segment of a point. */
  String segment(int point) {
    return lane(points.get(point)).segment().name();
  }

  /** Whether the load governs at the point. */
  boolean isWorst(int point) {
    return points.get(point).worst();
  }

  /** The place along the path. */
  NumberAt place(int point) {
    return places.number(point, "s");
  }

  /** The parts of the ordinate: the movement, and on the cut segment what comes with held ends. */
  List<NumberAt> parts(int point) {
    List<NumberAt> parts = new ArrayList<>(List.of(moved.get(point)));
    parts.addAll(own.get(point));
    return parts;
  }
}
