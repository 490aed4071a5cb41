package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import spanledger.action.RuleSet;
import spanledger.action.SegmentLoad;
import spanledger.frame.Node;
import spanledger.frame.Segment;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Procedure;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.vibration.LoadMass;
import spanledger.vibration.LoadMassProcedures;
import spanledger.vibration.Masses;
import spanledger.vibration.Vibration;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.Entry;
import spanledger.workbook.layout.EntryList;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.ProcedureTable;

/** The masses of the pieces and of nodes, live from the loads. */
final class VibrationMasses {

  private static final String MASS = "m";
  private static final String ALL = "mass of all";
  private static final String ALWAYS = "share of what is always there";
  private static final Source NO_LOAD = Source.declared("0: no load on the piece");

  private final LedgerSheet sheet;
  private final KeptCases kept;
  private final VibrationPieces pieces;
  private final LoadSheet loads;
  private final NodalLoadTable nodal;
  private final FigureSheet figures;
  private final NumberAt always;
  private final Map<Integer, Sums> ofPieces = new HashMap<>();
  private final Map<String, Sums> onNodes = new LinkedHashMap<>();
  private final List<ProcedureCells> tables = new ArrayList<>();
  private final DataCells masses;
  private final Map<String, NumberAt> nodeMasses = new LinkedHashMap<>();
  private final NumberAt whole;

  VibrationMasses(
      LedgerSheet sheet,
      Vibration vibration,
      KeptCases kept,
      VibrationPieces pieces,
      LoadSheet loads,
      NodalLoadTable nodal,
      FigureSheet figures) {
    this.sheet = sheet;
    this.kept = kept;
    this.pieces = pieces;
    this.loads = loads;
    this.nodal = nodal;
    this.figures = figures;
    always = writeAlways();
    writeSpread(of(vibration, LoadMass.Spread.class));
    writePoints(of(vibration, LoadMass.Point.class));
    writeNodal(of(vibration, LoadMass.OnNode.class));
    masses = writePieces();
    Sums all = new Sums(sheet.name()).plusSum(masses.column(MASS), total(masses));
    writeNodes().ifPresent(cells -> all.plusSum(cells.column(MASS), total(cells)));
    whole = writeWhole(all);
  }

  private NumberAt writeAlways() {
    Source permanent = Source.declared("permanent loads are there whole");
    return sheet
        .add(
            new EntryList(
                "Masses", List.of(Entry.given(ALWAYS, "ψ", 1, Dimension.NONE, permanent))))
        .number(ALWAYS);
  }

  private static <T extends LoadMass> List<T> of(Vibration vibration, Class<T> kind) {
    return vibration.loads().stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  private void writeSpread(List<LoadMass.Spread> spread) {
    Optional<ProcedureCells> cells =
        write(
            LoadMassProcedures.SPREAD,
            spread,
            one -> one.piece().name(),
            one -> symbol -> loadInput(one, one.load(), one.piece(), symbol));
    for (int i = 0; i < spread.size(); i++) {
      ofPieces
          .computeIfAbsent(spread.get(i).piece().index(), p -> new Sums(sheet.name()))
          .plus(cells.orElseThrow().number(i, MASS));
    }
  }

  private void writePoints(List<LoadMass.Point> points) {
    Optional<ProcedureCells> cells =
        write(
            LoadMassProcedures.POINT,
            points,
            one -> one.piece().name(),
            one -> symbol -> loadInput(one, one.load(), one.piece(), symbol));
    for (int i = 0; i < points.size(); i++) {
      Segment piece = points.get(i).piece();
      addToNode(piece.first(), cells.orElseThrow().number(i, "m_1"));
      addToNode(piece.second(), cells.orElseThrow().number(i, "m_2"));
    }
  }

  private void writeNodal(List<LoadMass.OnNode> onNode) {
    Optional<ProcedureCells> cells =
        write(
            LoadMassProcedures.ON_NODE,
            onNode,
            one -> one.load().node().name(),
            one ->
                symbol ->
                    symbol.equals("F_Z")
                        ? InputCell.shown(nodal.vertical(kept(one.part()), one.load()))
                        : common(one.part(), symbol));
    for (int i = 0; i < onNode.size(); i++) {
      addToNode(onNode.get(i).load().node(), cells.orElseThrow().number(i, MASS));
    }
  }

  private void addToNode(Node node, NumberAt mass) {
    onNodes.computeIfAbsent(node.name(), n -> new Sums(sheet.name())).plus(mass);
  }

  private <T extends LoadMass> Optional<ProcedureCells> write(
      Procedure procedure,
      List<T> all,
      Function<T, String> place,
      Function<T, Function<String, InputCell>> inputs) {
    if (all.isEmpty()) {
      return Optional.empty();
    }
    CompiledProcedure compiled = procedure.compile();
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (T one : all) {
      rows.add(
          new ProcedureTable.Row(
              List.of(one.part().loads().name(), place.apply(one)),
              Inputs.of(compiled, inputs.apply(one))));
    }
    ProcedureCells cells =
        sheet.add(
            new ProcedureTable(
                procedure.title(),
                compiled,
                List.of(new ProcedureTable.Label("case", 34), new ProcedureTable.Label("on", 34)),
                rows));
    tables.add(cells);
    return Optional.of(cells);
  }

  private InputCell loadInput(LoadMass one, SegmentLoad load, Segment piece, String symbol) {
    return switch (symbol) {
      case "x_1", "x_2" -> InputCell.inline(pieces.place(piece, symbol));
      case "D_Z" -> InputCell.inline(loads.cells(load).upward());
      case "ψ", "g" -> common(one.part(), symbol);
      default -> InputCell.inline(loads.cells(load).number(symbol));
    };
  }

  private InputCell common(Masses.Part part, String symbol) {
    if (symbol.equals("g")) {
      return InputCell.inline(figures.number(symbol));
    }
    return part.share() == 1
        ? InputCell.shown(always)
        : InputCell.shown(figures.number(RuleSet.VIBRATING_SHARE));
  }

  private KeptCases.Kept kept(Masses.Part part) {
    return kept.caseNamed(part.loads().name());
  }

  private DataCells writePieces() {
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (Segment piece : pieces.frame().segments()) {
      Sums sum = ofPieces.get(piece.index());
      rows.add(
          List.of(LedgerCell.text(piece.name()), sum == null ? LedgerCell.given(0) : sum.cell()));
    }
    return sheet.add(
        new DataTable(
            "Masses of the pieces",
            List.of(
                Column.text("piece", 34),
                Column.number(MASS, "with what lies on it", Dimension.MASS).withSource(NO_LOAD)),
            rows));
  }

  private static double total(DataCells cells) {
    double sum = 0;
    for (int i = 0; i < cells.rows(); i++) {
      sum += cells.number(i, MASS).value();
    }
    return sum;
  }

  private Optional<DataCells> writeNodes() {
    if (onNodes.isEmpty()) {
      return Optional.empty();
    }
    List<List<LedgerCell>> rows = new ArrayList<>();
    onNodes.forEach((node, sum) -> rows.add(List.of(LedgerCell.text(node), sum.cell())));
    DataCells cells =
        sheet.add(
            new DataTable(
                "Masses of nodes",
                List.of(
                    Column.text("node", 34),
                    Column.number(MASS, "of loads at or near it", Dimension.MASS)),
                rows));
    int row = 0;
    for (String node : onNodes.keySet()) {
      nodeMasses.put(node, cells.number(row++, MASS));
    }
    return Optional.of(cells);
  }

  private NumberAt writeWhole(Sums all) {
    return sheet
        .add(new EntryList("", List.of(Entry.number(ALL, "M", all.cell(), Dimension.MASS))))
        .number(ALL);
  }

  /** The mass of a piece. */
  NumberAt ofPiece(Segment piece) {
    return masses.number(piece.index(), MASS);
  }

  /** The masses that sit on nodes, by the names of the nodes. */
  Map<String, NumberAt> onNodes() {
    return nodeMasses;
  }

  /** The mass of all. */
  NumberAt whole() {
    return whole;
  }

  /** The tables in the order of the calculation. */
  List<ProcedureCells> tables() {
    return tables;
  }
}
