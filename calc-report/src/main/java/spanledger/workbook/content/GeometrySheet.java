package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.action.Figure;
import spanledger.assembly.Flight;
import spanledger.geometry.GeometryFinding;
import spanledger.geometry.LimitCheck;
import spanledger.geometry.StairSteps;
import spanledger.job.BuiltAssembly;
import spanledger.job.Job;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Procedure;
import spanledger.provenance.Source;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.ProcedureTable;

/** Heights, gaps, rises and goings against their limits. */
final class GeometrySheet {

  private static final Source DESCRIBED = Source.declared("description in the job");

  private final List<Judged> judged = new ArrayList<>();
  private final List<ProcedureCells> tables = new ArrayList<>();
  private final Map<String, Integer> flightRows = new LinkedHashMap<>();

  /**
   * A size that was judged.
   *
   * @param finding the size and its limit
   * @param used its live utilisation
   */
  record Judged(GeometryFinding finding, NumberAt used) {}

  private GeometrySheet() {}

  /** The sheet; without content if the job's structure was typed by hand only. */
  static GeometrySheet write(LedgerWorkbook workbook, Job job, FigureSheet figures) {
    GeometrySheet geometry = new GeometrySheet();
    job.assembly().ifPresent(built -> geometry.write(workbook, job, built, figures));
    return geometry;
  }

  /** Every size that was judged, with its live utilisation. */
  List<Judged> judged() {
    return List.copyOf(judged);
  }

  /** The tables of calculations. */
  List<ProcedureCells> tables() {
    return List.copyOf(tables);
  }

  private void write(LedgerWorkbook workbook, Job job, BuiltAssembly built, FigureSheet figures) {
    writeFlights(workbook, built.frame().flights());
    LedgerSheet sheet = workbook.sheet(SheetNames.GEOMETRY);
    sheet.title(
        "Geometry",
        "Whether people can walk, climb and hold on as the rules ask. Limits are those of the sheet"
            + " Figures.");
    sheet.note(
        "Sizes are those of the description, not of what was built: measure. What is not checked is"
            + " listed on Summary.");
    Map<Procedure, List<GeometryFinding>> byKind = new LinkedHashMap<>();
    for (GeometryFinding finding : built.geometry(job.rules())) {
      if (finding.isChecked()) {
        Figure limit = finding.limit().orElseThrow();
        byKind
            .computeIfAbsent(
                LimitCheck.of(limit.dimension(), finding.atMost()), k -> new ArrayList<>())
            .add(finding);
      }
    }
    byKind.forEach((procedure, findings) -> writeLimits(sheet, procedure, findings, figures));
  }

  private void writeFlights(LedgerWorkbook workbook, List<Flight> flights) {
    if (flights.isEmpty()) {
      return;
    }
    LedgerSheet sheet = workbook.sheet(SheetNames.FLIGHTS);
    sheet.title(
        "Flights of stairs",
        "Rise, step length and pitch of each flight from its description; the sheet "
            + SheetNames.GEOMETRY
            + " compares them with their limits.");
    CompiledProcedure procedure = StairSteps.PROCEDURE.compile();
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (Flight flight : flights) {
      flightRows.put(flight.stair().name(), rows.size());
      rows.add(
          new ProcedureTable.Row(
              List.of(flight.stair().name()),
              List.of(
                  InputCell.literal(flight.totalRise(), DESCRIBED),
                  InputCell.literal(flight.stair().rises(), DESCRIBED),
                  InputCell.literal(flight.going(), DESCRIBED))));
    }
    tables.add(
        sheet.add(
            new ProcedureTable(
                "Flights", procedure, List.of(new ProcedureTable.Label("stair", 22)), rows)));
  }

  private void writeLimits(
      LedgerSheet sheet, Procedure kind, List<GeometryFinding> findings, FigureSheet figures) {
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (GeometryFinding finding : findings) {
      Figure limit = finding.limit().orElseThrow();
      rows.add(
          new ProcedureTable.Row(
              List.of(
                  finding.check(),
                  finding.subject(),
                  limit.source().citation() + ", " + limit.source().confidence().words(),
                  finding.remark()),
              List.of(size(finding), limit(limit, figures))));
    }
    ProcedureCells cells =
        sheet.add(
            new ProcedureTable(
                    kind.title(),
                    kind.compile(),
                    List.of(
                        new ProcedureTable.Label("what is limited", 36),
                        new ProcedureTable.Label("on", 22),
                        new ProcedureTable.Label("limit from", 46),
                        new ProcedureTable.Label("remark", 46)),
                    rows)
                .judgedBy(LimitCheck.UTILISATION));
    tables.add(cells);
    for (int row = 0; row < findings.size(); row++) {
      judged.add(new Judged(findings.get(row), cells.number(row, LimitCheck.UTILISATION)));
    }
  }

  private InputCell size(GeometryFinding finding) {
    Optional<NumberAt> step =
        finding
            .step()
            .map(
                symbol ->
                    tables.get(0).number(flightRows.getOrDefault(finding.subject(), 0), symbol));
    return step.map(InputCell::shown)
        .orElseGet(() -> InputCell.literal(finding.size().orElseThrow(), DESCRIBED));
  }

  private static InputCell limit(Figure limit, FigureSheet figures) {
    return figures.ids().contains(limit.id())
        ? InputCell.shown(figures.number(limit.id()))
        : InputCell.literal(limit.value(), limit.source());
  }
}
