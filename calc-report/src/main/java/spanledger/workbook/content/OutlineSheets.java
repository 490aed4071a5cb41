package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spanledger.picture.Lettering;
import spanledger.picture.section.SectionAlbum;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Procedure;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.section.OutlineShape;
import spanledger.section.SectionStudy;
import spanledger.section.outline.BendingModuli;
import spanledger.section.outline.Outline;
import spanledger.section.outline.PlaneProperties;
import spanledger.section.outline.SectionAxes;
import spanledger.section.warping.TorsionBounds;
import spanledger.workbook.layout.Calculation;
import spanledger.workbook.layout.CalculationCells;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;

/**
 * The sheets that work out a section from its outline: boundary, bending, plates and finite
 * elements, pictures.
 */
final class OutlineSheets {

  private static final CompiledProcedure AXES = SectionAxes.PROCEDURE.compile();
  private static final CompiledProcedure BOUNDS = TorsionBounds.PROCEDURE.compile();

  /** Closer to a quarter turn than this, principal axes are those of the outline. */
  private static final double SAME_AXIS = 1e-9;

  private static final Map<String, String> SUMS = sums();

  private final Outline outline;
  private final PlaneProperties plane;
  private final BoundaryTables boundary;
  private final DataCells totals;
  private final VertexTable vertices;
  private final CalculationCells axes;
  private final CalculationCells torsion;
  private final Map<String, AxisTables> bending = new LinkedHashMap<>();
  private final PlateTable plates;
  private final FieldTable field;
  private final double nearest;

  /**
   * Writes the sheets.
   *
   * @param prefix before their names, to tell sections apart; may be empty
   * @param name of the section
   * @param source of the outline
   * @param inFull whether bending about the axes of the outline is shown beside that about the
   *     principal axes, and all pictures
   */
  OutlineSheets(
      LedgerWorkbook workbook,
      String prefix,
      String name,
      OutlineShape shape,
      Source source,
      boolean inFull,
      Lettering lettering) {
    outline = shape.outline();
    SectionStudy study = SectionStudy.of(shape);
    plane = study.plane();
    nearest = nearest(plane.majorAngle());
    LedgerSheet sheet = workbook.sheet(prefix + "Outline");
    sheet.title(
        "Outline of " + name,
        "Area, centroid and second moments as sums over the edges of the outline (Green's theorem);"
            + " y to the right, z up.");
    vertices = VertexTable.write(sheet, outline, source);
    boundary = BoundaryTables.write(sheet, "", vertices.pieces());
    totals = sheet.add(totals(sheet));
    LedgerSheet middle = workbook.sheet(prefix + "Axes and torsion");
    middle.title(
        "Centroid, axes and torsion constant of " + name,
        "From the sums over the boundary; the torsion constant from its two bounds.");
    axes = middle.add(new Calculation("Centroid and principal axes", AXES, axesInputs()));
    String label = shape.field().report().label();
    torsion =
        middle.add(
            new Calculation(
                "Torsion constant by finite elements, between its bounds",
                BOUNDS,
                List.of(
                    InputCell.solved(shape.field().torsion().lowerBound(), label),
                    InputCell.solved(shape.field().torsion().upperBound(), label))));
    writeBending(workbook, prefix, name, inFull);
    LedgerSheet walls = workbook.sheet(prefix + "Plates");
    walls.title("Plates of " + name, "Plates for local buckling, and what someone has to look at.");
    plates = PlateTable.write(walls, study, source);
    if (!study.features().isEmpty()) {
      walls.add(FeatureTable.of(study.features(), source));
    }
    LedgerSheet mesh = workbook.sheet(prefix + "Finite elements");
    mesh.title(
        "Finite elements of " + name,
        "Torsion, warping and shear, each value with mesh and error; the torsion constant stands on"
            + " Axes and torsion.");
    field = FieldTable.write(mesh, shape.field(), plane.centroid(), nearest);
    SectionPictures.write(
        workbook.sheet(prefix + "Pictures"),
        inFull
            ? SectionAlbum.of(study, name, lettering)
            : SectionAlbum.ofShape(study, name, lettering),
        name,
        lettering);
  }

  private static Map<String, String> sums() {
    Map<String, String> sums = new LinkedHashMap<>();
    sums.put("ΔA", "A");
    sums.put("ΔS_z", "S_z0");
    sums.put("ΔS_y", "S_y0");
    sums.put("ΔI_z", "I_z0");
    sums.put("ΔI_y", "I_y0");
    sums.put("ΔI_yz", "I_yz0");
    return sums;
  }

  private DataTable totals(LedgerSheet sheet) {
    List<Column> columns = new ArrayList<>(List.of(Column.text("", 6), Column.text("sum", 18)));
    List<LedgerCell> row =
        new ArrayList<>(List.of(LedgerCell.blank(), LedgerCell.text("all edges")));
    BoundaryTables.Total length = boundary.sum("ΔL", sheet.name());
    columns.add(Column.number("L", "length of the boundary", Dimension.LENGTH));
    row.add(LedgerCell.live(length.formula(), length.value()));
    SUMS.forEach(
        (share, symbol) -> {
          BoundaryTables.Total total = boundary.sum(share, sheet.name());
          columns.add(Column.number(symbol, words(symbol), BoundaryTables.Total.dimension(share)));
          row.add(LedgerCell.live(total.formula(), total.value()));
        });
    return new DataTable("Sums over the boundary, about the origin", columns, List.of(row));
  }

  private static String words(String symbol) {
    return SectionAxes.PROCEDURE.inputs().stream()
        .filter(input -> input.symbol().symbol().equals(symbol))
        .findFirst()
        .orElseThrow()
        .words();
  }

  private List<InputCell> axesInputs() {
    return Inputs.of(AXES, symbol -> InputCell.shown(total(symbol)));
  }

  /** A coordinate of the centroid in the outline, as a live sum for another sheet. */
  LedgerCell centroid(String axis, String formulaSheet) {
    return new Sums(formulaSheet).plus(axes.number(axis + "_c")).plus(vertices.origin(axis)).cell();
  }

  private void writeBending(LedgerWorkbook workbook, String prefix, String name, boolean inFull) {
    double major = plane.majorAngle();
    boolean straight =
        Math.abs(major) < SAME_AXIS || Math.abs(Math.abs(major) - Math.PI / 2) < SAME_AXIS;
    String angle = axes.number("α_1").at().absolute();
    Map<String, Angle> angles = new LinkedHashMap<>();
    if (inFull || straight) {
      angles.put("y", new Angle("0", 0, plane.y()));
      angles.put("z", new Angle("PI()/2", Math.PI / 2, plane.z()));
    }
    if (!straight) {
      angles.put("1", new Angle(angle, major, plane.major()));
      angles.put("2", new Angle(angle + "+PI()/2", major + Math.PI / 2, plane.minor()));
    }
    angles.forEach(
        (axis, of) -> {
          LedgerSheet sheet = workbook.sheet(prefix + "Axis " + axis);
          sheet.title(
              "Bending of " + name + " about axis " + axis,
              "Extreme fibres, elastic moduli, and the plastic modulus with the proof that both"
                  + " sides of its neutral axis have the same area.");
          DataCells turned =
              sheet.add(
                  new DataTable(
                      "",
                      List.of(
                          Column.text("", 6),
                          Column.text("axis", 18),
                          Column.number("α", "to the left of y", Dimension.NONE).withUnit("rad")),
                      List.of(
                          List.of(
                              LedgerCell.blank(),
                              LedgerCell.text("axis " + axis),
                              LedgerCell.live(of.formula(), of.value())))));
          bending.put(
              axis,
              AxisTables.write(
                  sheet,
                  vertices,
                  boundary,
                  new AxisTables.Axis(
                      axis,
                      turned.number(0, "α"),
                      axes.number("y_c"),
                      axes.number("z_c"),
                      total("A"),
                      axes.number("I_" + axis),
                      of.moduli())));
        });
  }

  /** The angle of an axis as formula and value, and its moduli. */
  private record Angle(String formula, double value, BendingModuli moduli) {}

  /** The turn of the principal y axis: the principal axis nearest to y. */
  private static double nearest(double major) {
    if (major > Math.PI / 4) {
      return major - Math.PI / 2;
    }
    return major < -Math.PI / 4 ? major + Math.PI / 2 : major;
  }

  /** The tables of bending about the principal axis nearest to y or to z. */
  private AxisTables nearestTo(String axis) {
    AxisTables own = bending.get("1") == null ? bending.get(axis) : null;
    boolean majorIsY = Math.abs(nearest - plane.majorAngle()) < 1;
    AxisTables found = own != null ? own : bending.get(axis.equals("y") == majorIsY ? "1" : "2");
    return Required.of(found, "Bending about " + axis);
  }

  /** Where an input of the calculation of an outline's properties comes from. */
  InputCell input(String symbol) {
    return switch (symbol) {
      case "A", "S_z0", "S_y0", "I_z0", "I_y0", "I_yz0" -> InputCell.shown(total(symbol));
      case "e_y" -> fibre(nearestTo("y"));
      case "e_z" -> fibre(nearestTo("z"));
      case "W_pl_y" -> InputCell.shown(nearestTo("y").plasticModulus());
      case "W_pl_z" -> InputCell.shown(nearestTo("z").plasticModulus());
      case "s_web", "s_flange_int", "s_flange_out", "s_round" ->
          InputCell.shown(plates.slenderness(symbol));
      default -> InputCell.shown(fieldValue(symbol));
    };
  }

  private static InputCell fibre(AxisTables tables) {
    List<NumberAt> fibres = tables.fibres();
    return InputCell.live(
        "MAX(" + fibres.get(0).at().absolute() + "," + fibres.get(1).at().absolute() + ")",
        Math.max(fibres.get(0).value(), fibres.get(1).value()),
        "the farther of both sides");
  }

  /** Bending about the axes shown, by their names. */
  Map<String, AxisTables> bending() {
    return bending;
  }

  /** A step of the calculation of centroid and principal axes. */
  NumberAt axes(String symbol) {
    return axes.number(symbol);
  }

  /** A sum over the boundary. */
  NumberAt total(String symbol) {
    return totals.number(0, symbol);
  }

  /** The greatest slenderness of a kind of plates, by the symbol of the section property. */
  NumberAt slenderness(String symbol) {
    return plates.slenderness(symbol);
  }

  /** A value of the finite elements. */
  NumberAt fieldValue(String symbol) {
    return symbol.equals("I_t") ? torsion.number("I_t") : field.value(symbol);
  }

  /** Tables with rows that a worked page can show. */
  List<ProcedureCells> tables() {
    return boundary.tables();
  }

  /** Every procedure used. */
  List<Procedure> procedures() {
    List<Procedure> procedures = new ArrayList<>();
    boundary.tables().forEach(table -> procedures.add(table.procedure().procedure()));
    procedures.add(SectionAxes.PROCEDURE);
    bending.values().forEach(b -> procedures.addAll(b.procedures()));
    procedures.add(TorsionBounds.PROCEDURE);
    return procedures;
  }
}
